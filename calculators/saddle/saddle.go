// Package saddle has the calculators of the saddle section, one file each.
package saddle
