package heat

import "math"

// RoomFrom says where a room's temperature comes from.
type RoomFrom uint8

const (
	RoomStated    RoomFrom = iota // for this log
	RoomFirstRow                  // the log's first row, which is cold
	RoomSheet                     // the sheet's
	RoomBetween                   // between a usual room, or the sheet's, and a first row that is warmer
	RoomAssumed                   // nobody says
	warmestColdC  = 35.0          // a hotend that is no warmer may be as cold as the room
	usualRoomC    = 22.0          // common practice, no source
	coldestRoomC  = -10.0
	statedRoomK   = 1.0 // standard errors, common practice, no source
	firstRowRoomK = 2.0
	sheetRoomK    = 3.0
	assumedRoomK  = 5.0
)

// Room is what is known of the room in which a log was recorded: what a person
// says of it, what the sheet does, and what the sensor showed in the first row,
// °C; the former two may be NaN. A hotend is never colder than the room, and may
// be left warm from before.
func Room(statedC, sheetC, firstC float64) (Estimate, RoomFrom) {
	cold := firstC <= warmestColdC && firstC >= coldestRoomC
	usualC := usualRoomC
	if !math.IsNaN(sheetC) {
		usualC = sheetC
	}
	switch {
	case !math.IsNaN(statedC):
		return Estimate{statedC, statedRoomK}, RoomStated
	case cold && firstC > usualC+firstRowRoomK:
		return Estimate{(usualC + firstC) / 2, max(firstRowRoomK, (firstC-usualC)/2)}, RoomBetween
	case cold:
		return Estimate{firstC, firstRowRoomK}, RoomFirstRow
	case !math.IsNaN(sheetC):
		return Estimate{sheetC, sheetRoomK}, RoomSheet
	}
	return Estimate{usualRoomC, assumedRoomK}, RoomAssumed
}
