package defines

// option reports whether a name is an option of the style: where no file
// defines it, it is not defined, as the firmware has it. Any other name may
// come from the board or be derived by the firmware.
func option(name string) bool {
	low, high := 0, len(optionNames)
	for low < high {
		mid := int(uint(low+high) >> 1)
		if optionNames[mid] < name {
			low = mid + 1
		} else {
			high = mid
		}
	}
	return low < len(optionNames) && optionNames[low] == name
}
