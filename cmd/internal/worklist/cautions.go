package worklist

// Cautions stand wherever somebody is about to work on a printer. They are
// common practice, no source.
const Cautions = `Before you apply this and heat:
- Power off and cold before wiring.
- A wrong sensor definition can overheat unseen: compare with a thermometer.
- Attend the first heat-up, with a smoke alarm in the room.
- Leave the printer alone only after the protection test has passed.
- Mains parts belong to licensed people and local codes.
`
