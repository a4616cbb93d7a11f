package measure

import "math/bits"

// sine is the sine of a without its sign. One is said apart, since a wide ends
// below it.
func sine(a Angle) (sin wide, one, negative bool) {
	const straight = Turn / 2
	if a %= Turn; a < 0 {
		a += Turn
	}
	if a >= straight {
		a, negative = a-straight, true
	}
	if a > RightAngle {
		a = straight - a
	}
	switch {
	case a == 0:
		return wide{}, false, negative
	case a == RightAngle/3:
		return wide{hi: 1 << 63}, false, negative
	case a == RightAngle:
		return wide{}, true, negative
	case a <= RightAngle/2:
		return sineOf(radians(a)), false, negative
	}
	return cosineOf(radians(RightAngle - a)), false, negative
}

// radians is a, at most 45 degrees, as the length of its arc.
func radians(a Angle) wide {
	// pi/180e9 x 2^163; the product is shifted back by 35.
	whole, rest := wide{0x99855222df329a84, 0xe97e7f01dc657eea}.scaled(uint64(a))
	return wide{whole<<29 | rest.hi>>35, rest.hi<<29 | rest.lo>>35}
}

// sineOf is x - x^3/3! + x^5/5! - ... for an x up to pi/4. The first term left
// out is below 2^-134.
func sineOf(x wide) wide {
	z := x.times(x)
	sum := sines[len(sines)-1]
	for i := len(sines) - 2; i >= 0; i-- {
		sum = sines[i].minus(z.times(sum))
	}
	return x.minus(x.times(z.times(sum)))
}

// cosineOf is 1 - x^2/2! + x^4/4! - ... for an x up to pi/4, but not nothing.
// The first term left out is below 2^-139.
func cosineOf(x wide) wide {
	z := x.times(x)
	sum := cosines[len(cosines)-1]
	for i := len(cosines) - 2; i >= 0; i-- {
		sum = cosines[i].minus(z.times(sum))
	}
	return wide{}.minus(z.times(sum)) // one less this: a wide turns over at one
}

// sines are 1/3!, 1/5!, ... rounded to the nearest.
var sines = [...]wide{
	{0x2aaaaaaaaaaaaaaa, 0xaaaaaaaaaaaaaaab}, // 1/3!
	{0x0222222222222222, 0x2222222222222222}, // 1/5!
	{0x000d00d00d00d00d, 0x00d00d00d00d00d0}, // 1/7!
	{0x00002e3bc74aad8e, 0x671f5583911ca003}, // 1/9!
	{0x0000006b99159fd5, 0x138e3f9d1f92e0df}, // 1/11!
	{0x00000000b092309d, 0x43684be51c198e92}, // 1/13!
	{0x0000000000d73f9f, 0x399dc0f88ec32b58}, // 1/15!
	{0x000000000000ca96, 0x3b81856a53593029}, // 1/17!
	{0x0000000000000097, 0xa4da340a0ab92651}, // 1/19!
	{0x0000000000000000, 0x5c6e3bdb73d5c630}, // 1/21!
	{0x0000000000000000, 0x002ec368262c7034}, // 1/23!
	{0x0000000000000000, 0x000013f3ccdd1660}, // 1/25!
	{0x0000000000000000, 0x0000000746ac70b7}, // 1/27!
	{0x0000000000000000, 0x00000000024b3f31}, // 1/29!
	{0x0000000000000000, 0x000000000000a1a7}, // 1/31!
}

// cosines are 1/2!, 1/4!, ... rounded to the nearest.
var cosines = [...]wide{
	{0x8000000000000000, 0x0000000000000000}, // 1/2!
	{0x0aaaaaaaaaaaaaaa, 0xaaaaaaaaaaaaaaab}, // 1/4!
	{0x005b05b05b05b05b, 0x05b05b05b05b05b0}, // 1/6!
	{0x0001a01a01a01a01, 0xa01a01a01a01a01a}, // 1/8!
	{0x0000049f93edde27, 0xd71cbbc05b4fa99a}, // 1/10!
	{0x00000008f76c77fc, 0x6c4bdaa26d4c3d68}, // 1/12!
	{0x000000000c9cba54, 0x603e4e905d6f8a2f}, // 1/14!
	{0x00000000000d73f9, 0xf399dc0f88ec32b6}, // 1/16!
	{0x0000000000000b41, 0x3c31dcbecbbdd802}, // 1/18!
	{0x0000000000000007, 0x950ae900808941ea}, // 1/20!
	{0x0000000000000000, 0x04338e5b6dfe14a5}, // 1/22!
	{0x0000000000000000, 0x0001f2cf01972f57}, // 1/24!
	{0x0000000000000000, 0x000000c4742fe352}, // 1/26!
	{0x0000000000000000, 0x0000000042862899}, // 1/28!
	{0x0000000000000000, 0x000000000013932c}, // 1/30!
	{0x0000000000000000, 0x000000000000050d}, // 1/32!
}

// atan is the angle of a rise y over a run x, from 0 to 90 degrees, rounded to
// the nanodegree. It is worked out to 2^-26 nanodegrees.
func atan(y, x uint64) Angle {
	switch {
	case y == 0:
		return 0
	case x == y:
		return RightAngle / 2
	case y > x:
		return RightAngle - atan(x, y)
	}
	// The run is shifted to 63 bits, so that its sum with the rise stays in 64.
	if shift := bits.LeadingZeros64(x); shift == 0 {
		x, y = x>>1, y>>1
	} else {
		x, y = x<<(shift-1), y<<(shift-1)
	}
	if y == x { // the bit that was shifted out parted them
		return RightAngle / 2
	}
	t, _ := bits.Div64(y, 0, x)
	const eighth = 0x6a09e667f3bcc908 // tan 22.5 degrees, the root of 2 less 1
	if t <= eighth {
		return smallAtan(t)
	}
	t, _ = bits.Div64(x-y, 0, x+y)
	return RightAngle/2 - smallAtan(t)
}

// smallAtan is the angle of t/2^64, up to 22.5 degrees: t - t^3/3 + t^5/5 - ...
// The first term left out is below 2^-67.
func smallAtan(t uint64) Angle {
	z, _ := bits.Mul64(t, t)
	sum := odds[len(odds)-1]
	for i := len(odds) - 2; i >= 0; i-- {
		p, _ := bits.Mul64(z, sum)
		sum = odds[i] - p
	}
	p, _ := bits.Mul64(z, sum)
	p, _ = bits.Mul64(t, p)
	const degrees = 0xd571836b91512fb2 // 180e9/pi x 2^28
	a, _ := bits.Mul64(t-p, degrees)
	return Angle((a + 1<<27) >> 28)
}

// odds are 1/3, 1/5, ... of 2^64.
var odds = [...]uint64{
	(1 << 64) / 3, (1 << 64) / 5, (1 << 64) / 7, (1 << 64) / 9, (1 << 64) / 11, (1 << 64) / 13,
	(1 << 64) / 15, (1 << 64) / 17, (1 << 64) / 19, (1 << 64) / 21, (1 << 64) / 23, (1 << 64) / 25,
	(1 << 64) / 27, (1 << 64) / 29, (1 << 64) / 31, (1 << 64) / 33, (1 << 64) / 35, (1 << 64) / 37,
	(1 << 64) / 39, (1 << 64) / 41, (1 << 64) / 43, (1 << 64) / 45, (1 << 64) / 47,
}
