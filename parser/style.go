package parser

// Request says what a style is to read.
type Request struct {
	Files  []string // paths inside the tree, in order
	Absent []string // included files that may be missing: from the root or absolute, also outside it
	Tool   int      // the hotend, from 0

	// Outside is what board or build define, apart from the files. A style that
	// has no such thing refuses it.
	Outside []Define
}

// Define is a name that is settled outside the files.
type Define struct {
	Name, Value string
	Undefined   bool // nothing defines it
	At          Span // where the sheet says so
}

// Style is one way to write a configuration. A style knows no rule and no
// physics.
type Style interface {
	// Name is what a sheet calls the style.
	Name() string
	// Recognises reports whether a file looks like this style.
	Recognises(f *File) bool
	// Joins reports whether a configuration may be several files that do not
	// include each other. Otherwise one main file includes the rest.
	Joins() bool
	// Read reads one printer. The error is an *Error.
	Read(t *Tree, r Request) (Config, error)
	// Blank is a configuration of which nothing is known. It has what any firmware
	// of the style has, with a note where another lacks it. Its printer is empty.
	Blank() Config
}

// Config is one configuration that was read.
type Config interface {
	Printer() *Printer
	// Others holds the other tools, the bed, the chamber and every further
	// heater of the configuration: what a change for this tool must leave as it
	// is.
	Others() []Heater
	// Edits turns changes into the smallest edits that make them, sorted by
	// file (in reading order) and offset, none overlapping. It reads nothing
	// and verifies nothing: that a change took hold shows when the result is
	// read. The error is an *Error with the place of a setting that cannot be
	// changed by editing the files.
	Edits(changes []Change) ([]Edit, error)
	// Lacks names what a whole configuration of the style has and this one does
	// not, as a person would look for it; none where it is whole. With includes
	// that were missing it cannot be told, and is none.
	Lacks() []Lack
	// Tools is how many hotends there are; 0 where that cannot be told.
	Tools() int
	// Hotends is how many hotends there are, which several tools may feed; 0 where
	// that cannot be told.
	Hotends() int
	// Definitions lists the sensor definitions that a hotend of this
	// configuration can name, chips and placeholders left out. A definition that
	// the files alone do not settle is here only where every firmware they may
	// be for has it.
	Definitions() []SensorDef
	// MaxTempWith is the highest max temp, °C, with which the firmware is sure to
	// build with a definition; 0 where no firmware that the files may be for looks.
	MaxTempWith(SensorDef) float64
	// CustomForm is the form of a definition that a person can write out in
	// full: FormBeta for beads alone, or FormPoints, of three points for a bead
	// and a table straight in resistance for platinum.
	CustomForm() SensorForm
	// Steps returns the console commands that do a task, in order; none
	// where the style has no command for it.
	Steps(task Task) []string
	// Keep says how figures that were measured at the console outlive a restart.
	Keep(keys ...Key) Keeping
	// Entries lists every macro or option in reading order.
	Entries() []Entry
}

// Lack is a part that a configuration does not have.
type Lack struct {
	What string // such as [printer], or the option that stands for it
	// Without: the rest can be read and checked all the same.
	Without bool
}

// Heater is what a configuration says of one heater, as far as it protects.
type Heater struct {
	Name     string        // as people say it, such as "tool 1" or "the chamber"
	Tool     int           // the hotend, from 0; NoTool where it is none
	Settings []Description // their keys as those of the tool's own heater
}

// NoTool is the Tool of a heater that is no hotend.
const NoTool = -1

// Tri is yes, no or unknown.
type Tri uint8

const (
	No Tri = iota
	Yes
	Maybe
)

func (t Tri) String() string { return [...]string{"no", "yes", "unknown"}[t] }

// Entry is one macro or option of a configuration.
type Entry struct {
	Name   string
	Value  string
	Means  string // what Value comes to where it names others; "" where it names none
	At     Span
	Active Tri // in force at the end
	// Elsewhere: it protects or measures a heater that is not the tool's own.
	Elsewhere bool
}

// TaskKind is something a person does at the printer's console.
type TaskKind uint8

const (
	TaskResetStored TaskKind = iota // forget stored settings, take those of the firmware, save
	TaskShowStored                  // print the settings in force, stored ones included
	TaskRestart                     // read the configuration again
	TaskReport                      // show the temperatures
	TaskHeat                        // set the hotend's target to TempC
	TaskHeatersOff                  //
	TaskTune                        // tune the hotend's gains at TempC
	TaskTuneModel                   // measure the figures of a model-based control
	TaskSetGains                    // use gains until the next start
	TaskSelect                      // take the tool to work with
	TaskSelectBare                  // the same, its distance in Z from the first tool taken as 0
	TaskSetOffset                   // set the distance in Z of Tool from the first one
	TaskExtrude                     // push LengthMM of filament at SpeedMMS with the tool that was taken
	TaskHome                        // home all axes
	TaskRaise                       // lift the nozzle to LengthMM above the bed

	// The height of the nozzle is measured with paper: home, begin, lower again and
	// again, end. Figure says what is measured; without one the height is only
	// shown.
	TaskBeginPaper // over the middle of the bed, LengthMM above it or LeastClearMM, begin to measure Figure
	TaskLower      // lower the nozzle by LengthMM
	TaskEndPaper   // the paper drags: take the height, and go up to LengthMM or LeastClearMM
	TaskAbortPaper // leave off
)

// LeastClearMM is how far above the bed the nozzle crosses it, mm: common practice,
// no source.
const LeastClearMM = 10

// Task is a TaskKind with its figures.
type Task struct {
	Kind       TaskKind
	Tool       int
	TempC      float64
	Kp, Ki, Kd float64 // TaskSetGains; all 0 where the person fills them in

	LengthMM, SpeedMMS float64 // mm, and of filament mm/s

	Figure Key // of the paper tasks: ProbeTrigger, Endstop(""), TowerHeight or none
}

// Keeping is how figures that were measured at the console outlive a restart.
type Keeping struct {
	// Steps are the console commands that save them; where ByHand is not empty,
	Less bool // the figure that was shown is taken off those of ByHand, not written over them
	// those that put in force what was written.
	Steps []string
	// ByHand is where the figures are written over the old ones, because no
	// command does it; Why says why none does.
	ByHand []Place
	Why    string
}
