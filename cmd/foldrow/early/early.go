// Package early sees to the first moments of the program, before the packages that
// render have been set up, which takes most of its start. Packages are begun in the
// order of their paths as far as their imports allow, so it comes before theirs.
package early

import (
	"os"
	"os/signal"
	"syscall"
)

// Ctrl-\ would end the program there with a page of addresses. It is let go by until
// somebody listens; what whoever started us had ignored stays so.
func init() {
	if !signal.Ignored(syscall.SIGQUIT) {
		signal.Notify(make(chan os.Signal, 1), syscall.SIGQUIT)
	}
}
