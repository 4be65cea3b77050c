// What notes.js uses of js-yaml.js, which is somebody else's and is not checked itself.

/** Something in a text, with where it stands. */
export interface Event {
  type: number;
  valueStart: number;
  start: number;
}

export const EVENT_ID: { DOCUMENT: 1; SEQUENCE: 2; MAPPING: 3; SCALAR: 4; ALIAS: 5; POP: 6 };
export function parseEvents(text: string, options: object): Event[];
export function getScalarValue(text: string, scalar: Event): string;
export function dump(value: object, options?: { lineWidth?: number }): string;

/** What is wrong with a text, and where. */
export class YAMLException extends Error {
  reason: string;
  mark?: { line: number; column: number };
}
