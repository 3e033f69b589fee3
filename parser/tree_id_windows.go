package parser

import (
	"io/fs"
	"os"
	"syscall"
)

func idOf(file *os.File, _ fs.FileInfo) FileID {
	var info syscall.ByHandleFileInformation
	if err := syscall.GetFileInformationByHandle(syscall.Handle(file.Fd()), &info); err != nil {
		return FileID{}
	}
	return FileID{uint64(info.VolumeSerialNumber), uint64(info.FileIndexHigh)<<32 | uint64(info.FileIndexLow)}
}
