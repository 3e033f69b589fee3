package rules

// All returns every rule, in the order in which `rules` lists them. A new rule
// is one file and one line here.
func All() []*Rule {
	return []*Rule{
		// Runaway protection
		runawayOff,
		runawayOffBed,
		runawayLoose,
		// Control
		pidStale,
		savedHidden,
		savedDamaged,
		advanceStale,
		// Configuration
		settingShadowed,
		configBroken,
		configGap,
		sheetMismatch,
		waiverExpired,
		// Sees what the others change, so it comes last.
		storedSettings,
	}
}
