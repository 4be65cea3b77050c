// What the search uses of stemmer.js, which is somebody else's and is not checked itself.

/** Returns the stem of an English word. */
export function stemmer(word: string): string;
