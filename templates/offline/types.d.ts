// For the compiler alone. Nothing here is published.

/** What a publication keeps offline: its version, and the hash of each file by its address. */
declare const guide: { version: string, files: Record<string, string> };
