package notebook

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"unicode"

	"github.com/gofrs/flock"
)

// ErrBusy says that another window has the project open.
var ErrBusy = errors.New("the project is open in another window")

// lock takes the project's lock file, which is separate from the notebook so
// that the notebook can be replaced under it. ErrBusy if it is held.
func lock(path string) (*flock.Flock, error) {
	if _, err := plain(path); err != nil {
		return nil, err
	}
	// The holder before may have deleted the file between our opening and
	// our locking it; then the lock is on a file nobody else sees.
	for range 10 {
		l := flock.New(path, flock.SetFlag(os.O_CREATE|os.O_RDWR|noFollow), flock.SetPermissions(0o600))
		held, err := l.TryLock()
		if err != nil {
			return nil, err
		}
		if !held {
			return nil, ErrBusy
		}
		ours, err1 := l.Stat()
		there, err2 := os.Lstat(path)
		if err1 == nil && err2 == nil && os.SameFile(ours, there) {
			return l, nil
		}
		_ = l.Unlock()
	}
	return nil, ErrBusy
}

// lockPath is the lock of all projects whose names differ only in case.
func lockPath(folder, name string) string {
	return filepath.Join(folder, strings.Map(foldRune, name)+".lock")
}

// foldRune gives the same letter for all that strings.EqualFold takes for one: the
// first of the small ones, or of all where none is small.
func foldRune(r rune) rune {
	best := r
	for f := unicode.SimpleFold(r); f != r; f = unicode.SimpleFold(f) {
		small, before := unicode.ToLower(f) == f, unicode.ToLower(best) == best
		if small && !before || small == before && f < best {
			best = f
		}
	}
	return best
}

// dropLock removes the lock file and lets the lock go, in the order that the
// platform allows.
func dropLock(l *flock.Flock) {
	if runtime.GOOS == "windows" {
		_ = l.Unlock()
		_ = os.Remove(l.Path())
		return
	}
	_ = os.Remove(l.Path())
	_ = l.Unlock()
}
