// Package browser holds the tests that need a browser: a guide is published,
// served on loopback with its real headers, and used in Chromium as a reader
// would. One Chromium serves them all, a tab for each test. Without Chromium they
// are skipped with a notice; PLUMBLINE_NEED_BROWSER=1 makes that a failure.
package browser
