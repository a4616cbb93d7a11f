package measure

import (
	"math/big"
	"math/rand/v2"
	"testing"
)

func TestWeight(t *testing.T) {
	for _, row := range []struct {
		mass Mass
		want Force
	}{
		{0, 0}, {Kilogram, 9_807}, {100 * Kilogram, 980_665}, {-Kilogram, -9_807}, {50, 0}, {51, 1}, {-51, -1},
		{453_592, 4_448}, // a pound: 4.4482216 N
		{45_359_237, 444_822},
	} {
		if got := Weight(row.mass); got != row.want {
			t.Errorf("%v weighs %v, want %v", row.mass, got, row.want)
		}
	}
	r := rand.New(rand.NewPCG(9, 8))
	gravity := ratio("0.00980665")
	for range 5000 {
		m := int64(r.Uint64()) >> r.IntN(64)
		want := roundHalfAway(mul(new(big.Rat).SetInt64(m), gravity))
		if got := Weight(Mass(m)); int64(got) != want.Int64() {
			t.Fatalf("%d mg weighs %d mN, want %v", m, got, want)
		}
	}
}

// What is shown, read back and spoken.
func TestShown(t *testing.T) {
	for _, row := range []struct {
		mass   Mass
		inches bool
		text   string
		shown  Mass
		spoken string
	}{
		{0, true, "0.0 lb", 0, "0 pounds"},
		{0, false, "0.00 kg", 0, "0 kilograms"},
		{1, true, "0.1 lb", 45_359, "0.1 pounds"},
		{1, false, "0.05 kg", 50 * Gram, "0.05 kilograms"},
		{453_592, true, "1.0 lb", 453_592, "1 pound"},
		{453_593, true, "1.1 lb", 498_952, "1.1 pounds"},
		{1_032_256, true, "2.3 lb", 1_043_262, "2.3 pounds"}, // glass 16 x 20 in of 2 mm
		{1_032_256, false, "1.05 kg", 1050 * Gram, "1.05 kilograms"},
		{1100 * Gram, false, "1.10 kg", 1100 * Gram, "1.1 kilograms"},
		{1100*Gram + 1, false, "1.15 kg", 1150 * Gram, "1.15 kilograms"},
		{Kilogram, false, "1.00 kg", Kilogram, "1 kilogram"},
		{-Kilogram, false, "-1.00 kg", -Kilogram, "minus 1 kilogram"},
	} {
		shown, text := ShowMass(row.mass, row.inches)
		spoken := string(AppendSpokenMass(nil, row.mass, row.inches))
		if shown != row.shown || text != row.text || spoken != row.spoken {
			t.Errorf("%v is shown as %v, %q, %q; want %v, %q, %q", row.mass, shown, text, spoken, row.shown, row.text, row.spoken)
		}
	}
	for _, row := range []struct {
		force  Force
		inches bool
		text   string
		shown  Force
		spoken string
	}{
		{0, false, "0 N", 0, "0 newtons"},
		{85_500, true, "19.3 lb", 85_851, "19.3 pounds"},
		{85_500, false, "86 N", 86 * Newton, "86 newtons"},
		{86 * Newton, false, "86 N", 86 * Newton, "86 newtons"},
		{86*Newton + 1, false, "87 N", 87 * Newton, "87 newtons"},
		{Newton, false, "1 N", Newton, "1 newton"},
		{4_448, true, "1.0 lb", 4_448, "1 pound"},
		{222_411, true, "50.0 lb", 222_411, "50 pounds"},
		{222_412, true, "50.1 lb", 222_856, "50.1 pounds"},
	} {
		shown, text := ShowForce(row.force, row.inches)
		spoken := string(AppendSpokenForce(nil, row.force, row.inches))
		if shown != row.shown || text != row.text || spoken != row.spoken {
			t.Errorf("%v is shown as %v, %q, %q; want %v, %q, %q", row.force, shown, text, spoken, row.shown, row.text, row.spoken)
		}
	}
}

// TestShownProperties: what is shown is enough and less than a step too much,
// its text reads as it, and shown again it stays as it is.
func TestShownProperties(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 7))
	for range 20_000 {
		v := r.Int64N(1<<r.IntN(40)+1) - 1<<10
		for _, inches := range []bool{true, false} {
			mass, text := ShowMass(Mass(v), inches)
			read, err := ParseMass(text, NoUnit)
			again, _ := ShowMass(mass, inches)
			step := 50 * Gram
			if inches {
				step = 45_360
			}
			if err != nil || read != mass || again != mass || mass < Mass(v) || mass-Mass(v) >= step {
				t.Fatalf("%d mg is shown as %d, %q, which reads as %d, %v, and is shown as %d", v, mass, text, read, err, again)
			}
			force, text := ShowForce(Force(v), inches)
			pull, err := ParseForce(text, NoUnit)
			third, _ := ShowForce(force, inches)
			reach := Newton
			if inches {
				reach = 445
			}
			if err != nil || pull != force || third != force || force < Force(v) || force-Force(v) >= reach {
				t.Fatalf("%d mN is shown as %d, %q, which reads as %d, %v, and is shown as %d", v, force, text, pull, err, third)
			}
			if inches && (Mass(v).UpTenthPound() != mass || Force(v).UpTenthPound() != force) {
				t.Fatalf("%d goes up to another tenth of a pound than is shown", v)
			}
		}
	}
	for _, v := range []int64{maxInt64, minInt64, maxInt64 - 1} {
		if got := Mass(v).UpTenthPound(); got < Mass(v) {
			t.Errorf("%d mg goes up to %d", v, got)
		}
		if got := Force(v).UpTenthPound(); got < Force(v) {
			t.Errorf("%d mN goes up to %d", v, got)
		}
	}
}
