// Package template writes shapes at true size, to be printed, glued to the work and cut
// along, or given to a machine: SVG, DXF and PDF.
package template
