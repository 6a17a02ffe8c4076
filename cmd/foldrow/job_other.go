//go:build !unix

package main

// Elsewhere no program is stopped by a key.

func canStop() bool { return false }

func standStill() {}

func watchGoingOn(func()) {}
