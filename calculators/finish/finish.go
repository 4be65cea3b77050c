// Package finish has the calculators that come after the setting: what test rides tell.
package finish
