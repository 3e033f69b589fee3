package rules

// All returns every rule, in the order in which `rules` lists them. A new rule
// is one file and one line here.
func All() []*Rule {
	return []*Rule{
		// Sensor
		sensorKind,
		sensorPlaceholder,
		sensorUnknown,
		sensorCurve,
		sensorResolution,
		sensorFault,
		sensorRedundant,
		// Temperature limits
		tempCeiling,
		tempReach,
		presetOver,
		coldExtrusion,
		minTempHigh,
		// Heater
		heaterOverpower,
		heaterUnderpower,
		heaterCurrent,
		supplyBudget,
		heaterDuty,
		heaterHeadroom,
		heaterStuckOn,
		heaterModel,
		controlCoarse,
		// Runaway protection
		runawayOff,
		runawayOffBed,
		watchdogOff,
		runawayLoose,
		runawayTight,
		// Control
		pidStale,
		savedHidden,
		savedDamaged,
		advanceStale,
		// Cold side, geometry, flow
		coldsideFan,
		fanVoltage,
		fanWires,
		tipShift,
		nozzleSize,
		flowLimit,
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
