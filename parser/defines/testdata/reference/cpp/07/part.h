#pragma once
	# d\
\
\
efine TRACE 0	// " quote
