package browser

import (
	"os"
	"testing"
)

// Each runs a test in every engine as a subtest, some at the same time: a browser
// mostly waits. An engine that this machine
// lacks is skipped with the reason; where FAIRMITER_CI=1 says that nothing may be
// lacking, that is a failure.
func Each(t *testing.T, test func(*testing.T, Engine)) {
	t.Helper()
	for _, e := range Engines() {
		t.Run(string(e), func(t *testing.T) {
			t.Parallel()
			Need(t, e)
			test(t, e)
		})
	}
}

// Need skips a test whose engine this machine lacks, or fails it as [Each] says.
func Need(t *testing.T, e Engine) {
	t.Helper()
	missing := Missing(e)
	if missing == "" {
		return
	}
	if os.Getenv("FAIRMITER_CI") == "1" {
		t.Fatal(missing)
	}
	t.Skip(missing)
}

// Open starts a browser for a test, which closes it.
func Open(t *testing.T, e Engine, o Options) Driver {
	t.Helper()
	d, err := Start(e, o)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := d.Close(); err != nil {
			t.Error(err)
		}
	})
	return d
}
