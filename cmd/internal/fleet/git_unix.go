//go:build unix

package fleet

import (
	"os"
	"os/exec"
	"strconv"
	"syscall"
)

// ownedByUser refuses what belongs to another user. Who works as root through
// sudo counts as both, as git has it (safe.directory in git-config(1)).
func ownedByUser(name string) error {
	info, err := os.Stat(name)
	if err != nil {
		return err
	}
	stat, ok := info.Sys().(*syscall.Stat_t)
	if !ok {
		return nil
	}
	user := os.Geteuid()
	if int(stat.Uid) == user {
		return nil
	}
	if caller, err := strconv.Atoi(os.Getenv("SUDO_UID")); user == 0 && err == nil &&
		int(stat.Uid) == caller {
		return nil
	}
	return errOwner
}

// ownGroup has a command and all that it starts end together.
func ownGroup(cmd *exec.Cmd) {
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	cmd.Cancel = func() error { return syscall.Kill(-cmd.Process.Pid, syscall.SIGKILL) }
}
