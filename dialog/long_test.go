package dialog_test

import (
	"fmt"
	"os"
	"runtime"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"foldrow/dialog"
)

// TestLongConversation holds a long conversation to time that grows with the
// turns: a turn after all of them may not take much longer than the first. What it
// remembers is the way back, one state for each change. With FOLDROW_TEST_LONG
// set, as in .ci/run, it has 100,000 turns, else a twentieth.
func TestLongConversation(t *testing.T) {
	if testing.Short() {
		t.Skip("it takes a while")
	}
	turns := 5_000
	if os.Getenv("FOLDROW_TEST_LONG") != "" {
		turns = 100_000
	}
	tk := talk(t)
	first := arrive(t, tk, "plan")
	before := heap()
	s := talked(tk, first, turns)
	bytes := int64(heap()-before) / int64(s.Depth)
	require.Greater(t, s.Depth, turns/10)
	require.Less(t, bytes, int64(16<<10))
	// the quickest of some rounds in turn, since a busy machine slows only some; a
	// turn that took longer with each one before it would be many times as slow
	early, late := time.Hour, time.Hour
	for range 10 {
		early, late = min(early, spent(tk, first)), min(late, spent(tk, s))
	}
	t.Logf("%v for %d turns at first, %v at last; %d changes to go back over, %d bytes each", early, aRound, late, s.Depth, bytes)
	require.Less(t, late, 2*early)
	back, _ := tk.Turn(s, fmt.Sprintf("undo %d", s.Depth))
	require.Zero(t, back.Depth)
}

// aRound is the turns timed at once.
const aRound = 100

func talked(tk *dialog.Talk, s dialog.State, turns int) dialog.State {
	for i := range turns {
		s, _ = tk.Turn(s, lineOf(i))
	}
	return s
}

func spent(tk *dialog.Talk, s dialog.State) time.Duration {
	start := time.Now()
	talked(tk, s, aRound)
	return time.Since(start)
}

// lineOf is one of the lines of a long conversation: changes, what-ifs kept
// and dropped, questions, lines not understood, and going back.
func lineOf(i int) string {
	switch i % 10 {
	case 0, 1, 2:
		return fmt.Sprintf("neck %d.%d cm", 36+i%12, i%10)
	case 3:
		return "what if 2x2"
	case 4:
		return "drop"
	case 5:
		return "how many stitches"
	case 6:
		return "undo"
	case 7:
		return "one two three four"
	case 8:
		return fmt.Sprintf("%d rows a layer", 8+i%9)
	}
	return "why"
}

// heap is the memory in use once what nobody needs is gone.
func heap() uint64 {
	runtime.GC()
	runtime.GC()
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	return m.HeapAlloc
}
