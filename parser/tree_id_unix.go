//go:build unix

package parser

import (
	"io/fs"
	"os"
	"syscall"
)

func idOf(_ *os.File, info fs.FileInfo) FileID {
	stat, ok := info.Sys().(*syscall.Stat_t)
	if !ok {
		return FileID{}
	}
	return FileID{uint64(stat.Dev), stat.Ino}
}
