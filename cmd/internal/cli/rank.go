package cli

import (
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/report"
	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/styles"
	"preflash/rules/sensor"
)

// rankFlags are the flags of sensor rank.
type rankFlags struct {
	used               string
	pullup, usedPullup float64
	topC               float64
	withinK            float64
}

func newSensorRank() *cobra.Command {
	var format formatFlag
	var output outputFlag
	var f rankFlags
	cmd := &cobra.Command{
		Use:   "rank FILE",
		Short: "Which known curve fits a measured sensor",
		Long: `Rank holds measured points against every known curve and says which definition
each style should use, and which curves cannot be told apart. A custom
definition is fitted only where no known curve goes with the points. It chooses
none that may be more than 5 K off at the top of the printing range.

FILE is a CSV with a header, either of

  temp_c,ohm                 the sensor's resistance at a temperature
  indicated_c,actual_c       what the firmware showed at a temperature; --used
                             says by which definition it read the sensor

Measure at three temperatures at least: a room, a printing temperature, one in
between. The thermometer is taken to be good to 2 K and 1 % of what it shows,
and its tip to read up to 5 % low; --within says how good it is in kelvin, such
as 1 where it shows ice water and boiling water right. Lines that start with #
are comments.`,
		Example: `  preflash sensor rank bead.csv
  preflash sensor rank bead.csv --within 1
  preflash sensor rank shown.csv --used ntc-100k-4267
  preflash sensor rank shown.csv --used beta:100000:3950 --print-top 285`,
		Args: arguments(1, 1, "the file of measured points"),
		RunE: func(cmd *cobra.Command, args []string) error {
			if err := format.check(); err != nil {
				return err
			}
			if !cmd.Flags().Changed("used-pullup") {
				f.usedPullup = f.pullup
			}
			s, err := f.rank(args[0])
			if err != nil {
				return err
			}
			return writeFormat(cmd, &output, &format, args, s, report.RankJSON, func(w io.Writer, s report.SensorRank) error {
				s.Width = textWidth(w)
				return report.RankText(w, s)
			})
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&f.used, "used", "", "definition by which the firmware read the sensor: a known curve or beta:R25:B")
	flags.Float64Var(&f.pullup, "pullup", sensor.UsualPullupOhm, "pull-up on the board, in ohm")
	flags.Float64Var(&f.usedPullup, "used-pullup", 0, "pull-up that --used assumes, in ohm (default: that of --pullup)")
	flags.Float64Var(&f.withinK, "within", 0, "how good the thermometer is, K (default: 2 K and 1 %)")
	flags.Float64Var(&f.topC, "print-top", 260, "top of the printing range, °C")
	format.add(cmd, "text", "json")
	output.add(cmd)
	return cmd
}

func (f *rankFlags) rank(name string) (report.SensorRank, error) {
	s := report.SensorRank{Used: f.used, PullupOhm: f.pullup, Within: f.withinK}
	by := sensor.UsualThermometer
	if f.withinK != 0 {
		by.OffK, by.OffShare = f.withinK, 0
	}
	switch {
	case !(f.pullup > 0 && f.pullup <= 1e7) || !(f.usedPullup > 0 && f.usedPullup <= 1e7):
		return s, errors.New("a pull-up must be above 0 Ω and at most 10 MΩ")
	case f.withinK != 0 && !(f.withinK >= 0.1 && f.withinK <= 20):
		return s, errors.New("--within must be from 0.1 to 20 K")
	case !(f.topC >= 100 && f.topC <= 600):
		return s, errors.New("--print-top must be from 100 to 600 °C")
	}
	file, err := record.Open(name)
	if err != nil {
		return s, err
	}
	rec, err := record.ReadSensor(file)
	if err != nil {
		return s, err
	}
	points, err := f.points(rec)
	if err != nil {
		return s, err
	}
	s.File = file.Name
	if s.Ranking, err = sensor.Rank(points, by, f.topC); err != nil {
		e := &parser.Error{File: file.Name, Message: err.Error()}
		var point *sensor.PointError
		if errors.As(err, &point) {
			e.Line = rec.Rows[point.Point].Line
		}
		return s, e
	}
	for _, r := range rec.Rows {
		s.Lines = append(s.Lines, r.Line)
	}
	for _, style := range styles.All() {
		c := report.StyleChoice{Style: style.Name()}
		c.Choice, c.Answer = s.Ranking.Choose(style.Blank(), f.pullup)
		s.Choices = append(s.Choices, c)
	}
	return s, nil
}

// points gives the measured points in ohm, through the definition where the
// firmware's reading was recorded.
func (f *rankFlags) points(rec *record.Sensor) ([]parser.SensorPoint, error) {
	var used *sensor.Circuit
	switch {
	case rec.Indicated && f.used == "":
		return nil, fmt.Errorf("%s holds what the firmware indicated: say with --used by which definition, such as --used ntc-100k-3950; `preflash sensor curves` lists them", rec.File.Name)
	case !rec.Indicated && f.used != "":
		return nil, fmt.Errorf("%s holds resistances, to which --used says nothing; leave it out", rec.File.Name)
	case rec.Indicated:
		k, err := sensor.Parse(f.used)
		if err != nil {
			return nil, err
		}
		used = &sensor.Circuit{Curve: k.Curve, PullupOhm: f.usedPullup}
	}
	points := make([]parser.SensorPoint, len(rec.Rows))
	for i, r := range rec.Rows {
		points[i] = parser.SensorPoint{TempC: r.ActualC, Ohm: r.Ohm}
		if used != nil {
			points[i].Ohm = used.OhmAt(r.IndicatedC, f.pullup)
		}
	}
	return points, nil
}
