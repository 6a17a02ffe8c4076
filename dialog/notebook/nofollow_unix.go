//go:build unix

package notebook

import "syscall"

// noFollow makes opening a symbolic link an error even if it was put there
// after the check.
const noFollow = syscall.O_NOFOLLOW
