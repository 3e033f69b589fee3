#pragma once
/* x */ #defi\	 
ne SPARE 'ab'
#define PANEL_LIGHT/* one */ // two