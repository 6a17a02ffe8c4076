package engine_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// README says how many checks there are; the table must have as many.
func TestReadmeCountsTheChecks(t *testing.T) {
	f, err := os.Open("../testdata/checks.csv")
	require.NoError(t, err)
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	rows, err := r.ReadAll()
	require.NoError(t, err)
	readme, err := os.ReadFile("../README.md")
	require.NoError(t, err)
	require.Contains(t, string(readme), fmt.Sprintf("gathers %d checks", len(rows)-1))
}
