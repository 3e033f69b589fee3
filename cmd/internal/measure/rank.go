package measure

import (
	"errors"
	"fmt"

	"preflash/parser"
	"preflash/parser/record"
	"preflash/parser/styles"
	"preflash/rules/sensor"
)

// RankOptions say how a sensor was measured and what it is for.
type RankOptions struct {
	Used                     string // by which definition the firmware read it; "" for ohms measured
	PullupOhm, UsedPullupOhm float64
	TopC                     float64 // of printing
	WithinK                  float64 // how good the thermometer is; 0 for a usual one
}

// SensorRank is a measured sensor against the known curves.
type SensorRank struct {
	File      string
	Used      string // the definition by which the firmware read it; "" where ohms were measured
	PullupOhm float64
	Ranking   *sensor.Ranking
	Lines     []int   // of each point in the file
	Within    float64 // how good the thermometer is said to be, K; 0 where nobody says
	Choices   []StyleChoice
	Width     int // columns of text; 0 means 80
}

// StyleChoice is what one style should use, or why there is none.
type StyleChoice struct {
	Style  string
	Answer sensor.Answer
	sensor.Choice
}

// RankSensor ranks the known curves by the measured points of a file, and chooses a
// definition for each style.
func RankSensor(name string, o RankOptions) (SensorRank, error) {
	s := SensorRank{Used: o.Used, PullupOhm: o.PullupOhm, Within: o.WithinK}
	by := sensor.UsualThermometer
	if o.WithinK != 0 {
		by.OffK, by.OffShare = o.WithinK, 0
	}
	file, err := record.Open(name)
	if err != nil {
		return s, err
	}
	rec, err := record.ReadSensor(file)
	if err != nil {
		return s, err
	}
	points, err := o.points(rec)
	if err != nil {
		return s, err
	}
	s.File = file.Name
	if s.Ranking, err = sensor.Rank(points, by, o.TopC); err != nil {
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
		c := StyleChoice{Style: style.Name()}
		c.Choice, c.Answer = s.Ranking.Choose(style.Blank(), o.PullupOhm)
		s.Choices = append(s.Choices, c)
	}
	return s, nil
}

// points gives the measured points in ohm, through the definition where the
// firmware's reading was recorded.
func (o *RankOptions) points(rec *record.Sensor) ([]parser.SensorPoint, error) {
	var used *sensor.Circuit
	switch {
	case rec.Indicated && o.Used == "":
		return nil, fmt.Errorf("%s holds what the firmware indicated: say with --used by which definition, "+
			"such as --used ntc-100k-3950; `preflash sensor curves` lists them", rec.File.Name)
	case !rec.Indicated && o.Used != "":
		return nil, fmt.Errorf("%s holds resistances, to which --used says nothing; leave it out",
			rec.File.Name)
	case rec.Indicated:
		k, err := sensor.Parse(o.Used)
		if err != nil {
			return nil, err
		}
		used = &sensor.Circuit{Curve: k.Curve, PullupOhm: o.UsedPullupOhm}
	}
	points := make([]parser.SensorPoint, len(rec.Rows))
	for i, r := range rec.Rows {
		points[i] = parser.SensorPoint{TempC: r.ActualC, Ohm: r.Ohm}
		if used != nil {
			points[i].Ohm = used.OhmAt(r.IndicatedC, o.PullupOhm)
		}
	}
	return points, nil
}
