package build

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"github.com/fairmiter/fairmiter/framing"
	"github.com/fairmiter/fairmiter/framing/draw"
)

// What the build adds where a page begins with an order.
const (
	SchemaName = "order.schema.json" // what an order can hold
	SampleName = "sample.json"       // the page's own: the order of a first visit
)

// SampleMark is where index.html takes the front of the sample, so that a first
// visit sees it before the module is there.
const SampleMark = "<!-- sample:front -->"

// Schema reads the schema of orders.
func Schema(ctx context.Context) ([]byte, error) {
	out, err := exec.CommandContext(ctx, "go", "list", "-f", "{{.Dir}}", "github.com/fairmiter/fairmiter/framing").Output()
	if err != nil {
		return nil, fmt.Errorf("go list framing: %w", err)
	}
	return os.ReadFile(filepath.Join(strings.TrimSpace(string(out)), SchemaName))
}

// SampleFront draws the front of the sample as index.html holds it.
func SampleFront(sample []byte) (string, error) {
	plan, err := framing.NewReading(sample).Work()
	if err != nil {
		return "", fmt.Errorf("%s: %w", SampleName, err)
	}
	return draw.SVG(plan, 0, draw.Front, draw.Options{Interactive: true}), nil
}

// withSample draws the sample into an index that has a place for it.
func withSample(index, sample []byte) ([]byte, error) {
	if !bytes.Contains(index, []byte(SampleMark)) {
		return index, nil
	}
	if sample == nil {
		return nil, errors.New(IndexName + " has a place for the sample, and the page no " + SampleName)
	}
	front, err := SampleFront(sample)
	return bytes.Replace(index, []byte(SampleMark), []byte(front), 1), err
}
