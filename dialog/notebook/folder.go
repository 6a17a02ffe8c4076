package notebook

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
)

// ErrNoHome says that neither a flag nor the environment tells where the
// notebooks live.
var ErrNoHome = errors.New("no home folder is known")

// ErrLink says that a symbolic link or something else that is no plain file or
// folder stands where a notebook should be.
var ErrLink = errors.New("a link or a special file stands in the notebook's place")

// Folder is where the notebooks live: the folder "notebooks" inside the state
// folder. The state folder is the flag's value, else FOLDROW_STATE, else
// foldrow inside the user's state home by the platform's convention (goos is
// the platform's name as in runtime.GOOS). Nothing is created or looked at.
//
// The inner folder is ours alone, so that its permissions can be closed
// without touching a folder that the user chose.
func Folder(env func(string) string, goos, flag string) (string, error) {
	for _, state := range []string{flag, env("FOLDROW_STATE")} {
		if state != "" {
			return filepath.Join(state, "notebooks"), nil
		}
	}
	home, err := stateHome(env, goos)
	if err != nil {
		return "", err
	}
	return filepath.Join(home, "foldrow", "notebooks"), nil
}

// stateHome follows the XDG base directory specification, which asks that a
// relative XDG_STATE_HOME is ignored, and the habits of the other platforms.
func stateHome(env func(string) string, goos string) (string, error) {
	if x := env("XDG_STATE_HOME"); filepath.IsAbs(x) {
		return x, nil
	}
	if goos == "windows" {
		if local := env("LOCALAPPDATA"); local != "" {
			return local, nil
		}
		if profile := env("USERPROFILE"); profile != "" {
			return filepath.Join(profile, "AppData", "Local"), nil
		}
		return "", ErrNoHome
	}
	home := env("HOME")
	switch {
	case home == "":
		return "", ErrNoHome
	case goos == "darwin":
		return filepath.Join(home, "Library", "Application Support"), nil
	}
	return filepath.Join(home, ".local", "state"), nil
}

// makeFolder creates the folder closed to others, or closes one that is open.
func makeFolder(folder string) error {
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return &WriteError{folder, err}
	}
	info, err := os.Lstat(folder)
	switch {
	case err != nil:
		return &WriteError{folder, err}
	case !info.IsDir():
		return &WriteError{folder, ErrLink}
	case info.Mode().Perm()&0o077 != 0:
		// A folder that cannot be closed, on a file system without
		// permissions or owned by someone else, still serves: the
		// notebooks in it are 0600.
		_ = os.Chmod(folder, 0o700)
	}
	return nil
}

// plain reports whether path is a regular file, is absent (false, nil), or is
// something that must not be opened (ErrLink).
func plain(path string) (bool, error) {
	info, err := os.Lstat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return false, nil
	case err != nil:
		return false, err
	case !info.Mode().IsRegular():
		return false, ErrLink
	}
	return true, nil
}

// syncFolder makes a new or renamed file's name outlive a power cut. Not every
// platform can; the file's own bytes are synced in any case.
func syncFolder(folder string) {
	if d, err := os.Open(folder); err == nil {
		_ = d.Sync()
		_ = d.Close()
	}
}
