package notebook

import (
	"errors"
	"io/fs"
	"os"
	"strconv"
)

// sideMark is what a side copy has after the project's name. A dot cannot stand in
// the name itself.
const sideMark = ".damaged-"

// sideCopy writes data to the first free file "<project>.damaged-<n>.txt" and
// gives its path once the disk has it.
func sideCopy(project string, data []byte) (string, error) {
	for n := 1; ; n++ {
		path := project + sideMark + strconv.Itoa(n) + ".txt"
		err := writeNew(path, data)
		if errors.Is(err, fs.ErrExist) {
			continue
		}
		return path, err
	}
}

// writeNew writes a file that must not exist yet, 0600 and synced. Nothing is
// left behind if that fails.
func writeNew(path string, data []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o600)
	if err != nil {
		return err
	}
	_, err = f.Write(data)
	if err == nil {
		if err = f.Sync(); errors.Is(err, errors.ErrUnsupported) {
			err = nil
		}
	}
	err = errors.Join(err, f.Close())
	if err != nil {
		_ = os.Remove(path)
	}
	return err
}
