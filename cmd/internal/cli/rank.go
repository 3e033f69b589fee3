package cli

import (
	"errors"
	"io"

	"github.com/spf13/cobra"

	"preflash/cmd/internal/measure"
	"preflash/rules/sensor"
)

func newSensorRank() *cobra.Command {
	var out textOrJSON
	var o measure.RankOptions
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
			if !cmd.Flags().Changed("used-pullup") {
				o.UsedPullupOhm = o.PullupOhm
			}
			if err := checkRank(&o); err != nil {
				return err
			}
			s, err := measure.RankSensor(args[0], o)
			if err != nil {
				return err
			}
			return writeEither(cmd, &out, args, s, measure.RankJSON,
				func(w io.Writer, s measure.SensorRank) error {
					s.Width = textWidth(w)
					return measure.RankText(w, s)
				})
		},
	}
	flags := cmd.Flags()
	flags.StringVar(&o.Used, "used", "", "definition by which the firmware read the sensor: "+
		"a known curve or beta:R25:B")
	flags.Float64Var(&o.PullupOhm, "pullup", sensor.UsualPullupOhm, "pull-up on the board, in ohm")
	flags.Float64Var(&o.UsedPullupOhm, "used-pullup", 0, "pull-up that --used assumes, in ohm (default: "+
		"that of --pullup)")
	flags.Float64Var(&o.WithinK, "within", 0, "how good the thermometer is, K (default: 2 K and 1 %)")
	flags.Float64Var(&o.TopC, "print-top", 260, "top of the printing range, °C")
	out.add(cmd)
	return cmd
}

// checkRank refuses options by which no sensor can be ranked.
func checkRank(o *measure.RankOptions) error {
	switch {
	case !(o.PullupOhm > 0 && o.PullupOhm <= 1e7) || !(o.UsedPullupOhm > 0 && o.UsedPullupOhm <= 1e7):
		return errors.New("a pull-up must be above 0 Ω and at most 10 MΩ")
	case o.WithinK != 0 && !(o.WithinK >= 0.1 && o.WithinK <= 20):
		return errors.New("--within must be from 0.1 to 20 K")
	case !(o.TopC >= 100 && o.TopC <= 600):
		return errors.New("--print-top must be from 100 to 600 °C")
	}
	return nil
}
