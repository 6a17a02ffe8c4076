//go:build !unix

package notebook

// noFollow has no equal here; the check before opening stands alone.
const noFollow = 0
