package engine_test

import (
	"fmt"
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// README says how many checks there are; the table must have as many.
func TestReadmeCountsTheChecks(t *testing.T) {
	readme, err := os.ReadFile("../README.md")
	require.NoError(t, err)
	require.Contains(t, string(readme), fmt.Sprintf("gathers %d checks", len(readChecks(t))))
}
