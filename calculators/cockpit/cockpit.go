// Package cockpit has the calculators of the cockpit section, one file each:
// where the grips stand, what that leaves of the arms standing and seated, and
// which parts move them.
package cockpit
