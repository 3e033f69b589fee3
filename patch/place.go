package patch

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"preflash/parser"
)

// reachable refuses a name that a diff cannot carry to just this file.
func reachable(name string) error {
	if !filepath.IsLocal(filepath.FromSlash(name)) || name == "." {
		where := "a folder that holds it"
		if up := strings.Count(name, "../"); up > 0 && strings.HasPrefix(name, strings.Repeat("../", up)) {
			where = strings.Repeat("../", up)
		}
		return &parser.Error{File: name,
			Message: "lies outside the working directory, where no diff can reach it; run preflash in " +
				where}
	}
	if folder, top := repositoryFolder(); folder != "" && strings.HasPrefix(name, folder) {
		// Left to guess how many folders to strip, git looks for the name of its
		// own folder, seen from the repository, behind the a/ (guess_p_value in
		// its apply.c, from memory; the script apply.txtar asks git).
		return &parser.Error{File: name,
			Message: fmt.Sprintf("could be taken for %s by git apply without -p1, since the folder has the "+
				"name of the one that it lies in; run preflash in %s",
				strings.TrimPrefix(name, folder), top)}
	}
	return nil
}

// repositoryFolder gives the working directory as a path inside its repository,
// ending in a slash, and the way up to its top; "" at the top and where there is
// no repository.
func repositoryFolder() (folder, top string) {
	wd, err := os.Getwd()
	if err != nil {
		return "", ""
	}
	inside, err := filepath.Rel(parser.RepositoryOf(wd), wd)
	if err != nil || inside == "." {
		return "", ""
	}
	folder = filepath.ToSlash(inside) + "/"
	return folder, strings.Repeat("../", strings.Count(folder, "/"))
}

// refuseHardLinks refuses to change a file that the printers reach under two names,
// neither of which leads to the other: the tools that apply a diff make a new
// file under one name and leave the other as it was.
func (g *group) refuseHardLinks() error {
	for _, changed := range g.plan.changed {
		for _, t := range g.trials {
			for _, f := range t.Files {
				if f.ID == changed.ID && f.Real != changed.Real && f.ID != (parser.FileID{}) {
					return &parser.Error{File: max(f.Real, changed.Real),
						Message: fmt.Sprintf("is the same file as %s by a hard link, which applying a diff "+
							"would part; keep one of the two, or make it a symbolic link",
							min(f.Real, changed.Real))}
				}
			}
		}
	}
	return nil
}
