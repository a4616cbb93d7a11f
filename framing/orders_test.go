package framing_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/fairmiter/fairmiter/framing"
)

// testdata is where the sample orders and their plans stand.
const testdata = "../testdata"

// sampleFiles reads every sample order's text, by name.
func sampleFiles(t testing.TB) map[string][]byte { return sampleFilesIn(t, "") }

// sampleFilesIn reads the texts in a folder below the sample orders.
func sampleFilesIn(t testing.TB, folder string) map[string][]byte {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(testdata, "orders", folder, "*.json"))
	if err != nil {
		t.Fatal(err)
	}
	texts := make(map[string][]byte, len(files))
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		texts[strings.TrimSuffix(filepath.Base(file), ".json")] = text
	}
	return texts
}

// sampleOrders reads every sample order; each must be free of problems.
func sampleOrders(t testing.TB) map[string]framing.Order {
	t.Helper()
	orders := make(map[string]framing.Order)
	for name, text := range sampleFiles(t) {
		order, err := framing.Read(text)
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		orders[name] = order
	}
	return orders
}
