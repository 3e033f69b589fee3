package defines

import "strconv"

// basisOf tells by which published firmware a configuration is judged.
func basisOf(s *source) basis {
	for _, name := range [...]string{"CONFIGURATION_H_VERSION", "CONFIGURATION_ADV_H_VERSION"} {
		if m := s.macro(name); m.winner != nil {
			if v, err := strconv.ParseUint(m.winner.value(), 16, 64); err == nil {
				return versionBasis(v)
			}
		}
	}
	switch generationOf(s) {
	case gen10, gen11, gen20:
		return older
	}
	return older | newer
}
