// What the modules hand to one another, for the compiler alone. Nothing here is published.

import type MiniSearch from "./minisearch.js";

/** A key of the record and its value in base units; marks such as estimated=KEY are pairs too. */
export type Pair = [key: string, value: string];

/** Pairs by name. */
export type Pairs = Map<string, Pair>;

/** A line of a bike's log: a change that was made, a note, or both. */
export interface Change {
  on: string;
  key?: string;
  value?: string;
  was?: string;
  note?: string;
  scores?: string;
}

/** A bike as a device keeps it; its record holds its name and no body number. */
export interface Bike {
  id: string;
  record: string;
  log: Change[];
  ticks: Record<string, string>;
  drafts?: Record<string, string>; // of a book that an earlier version kept; only read
}

/** A rider as a device keeps them; bike is the one that was chosen last. */
export interface Rider {
  id: string;
  record: string;
  bike: string;
  bikes: Bike[];
}

/** All that a device keeps; rider is the one that was chosen last, count the last id. */
export interface Book {
  version: number;
  count: number;
  units?: string;
  rider: string;
  riders: Rider[];
}

/** What a tab holds: the record on show, what of it the book lacks, and whose it is. */
export interface Held {
  pairs: Pairs;
  unsaved: Map<string, Pair | undefined>; // what changed here since the book was written to
  book: Book;
  place?: Place; // whose numbers these are, in the book
  arrival?: Book; // somebody's numbers that came and are in nobody's place yet
  before?: { said: string; book: Book; place?: Place; kept: boolean; pairs: Pairs; alone: boolean }; // what undoing brings back
  keeping: boolean; // the book is on the device
  alone: boolean; // the numbers on show are somebody else's
  passing: Record<string, string>; // what is ticked on them
}

/** What a fitter wrote for one client. */
export interface Wrote {
  note: string;
  message: string;
  next: { key: string; value: string; typed: string; label: string }[];
}

/** The same as a file has it, of whom it names, with its lines. */
export interface Noted {
  client: string;
  place?: string;
  note: string;
  message: string;
  next: { key: string; typed: string; place?: string }[];
  tried?: boolean; // its settings could not be read
  told?: boolean; // that it may be several people's or bikes' is said already
}

/** A fitter's file of notes, and what is wrong in it. */
export interface Notes {
  from?: string;
  guide?: string;
  clients: Noted[];
  problems: string[];
}

/** What was read from files: replies, what could not be, and files of notes. */
export interface Read {
  list: [name: string, text: string][];
  problems: string[];
  notes: [name: string, text: string][];
}

/** A reply as the engine lists it: which, where notes on it are kept, and whose it is. */
export interface Listed {
  at: number;
  slot: number;
  rider?: string;
  name: string;
  bike: string;
  from: string;
  client: string;
}

/** What a fitter opened in this tab: names and texts, which reply is on show, what was written. */
export interface Benched {
  replies: [name: string, text: string][];
  at: number;
  wrote: Record<number, Wrote>; // by the first reply about the same bike of the same rider
  waiting: Noted[]; // notes of a file on nobody who is here
  from?: string;
  guide?: string; // as a file of notes has it
}

/** A rider and one of their bikes, by id. */
export interface Place {
  rider: string;
  bike: string;
}

/** What a tab shows: the record in its address, whose, and whether it stays apart. */
export interface Tab {
  text?: string;
  place?: Place;
  alone?: boolean;
}

/** What becomes of numbers that came from elsewhere. */
export type Answer = "replace" | "both" | "plan" | "cancel";

/** Is told of changes of the record: the keys, who made them, and whether all was replaced. */
export type Hear = (keys: Set<string>, source: unknown, all?: boolean) => void;

/** What stands in the way of an answer; needed: it is only not filled in yet. */
export interface Problem {
  message: string;
  input?: string;
  needed?: boolean;
  suggest?: string;
  doubt?: boolean; // the value is used all the same
}

/** A question as the engine takes it; which of its other keys count depends on what is asked. */
export interface Question {
  record: string;
  units?: string;
  [key: string]: unknown;
}

/** What an answer of any kind may hold. */
interface Said {
  error?: string;
  problems?: Problem[];
  doubts?: string[];
  waiting?: string;
  spoken?: string;
  text?: string;
  link?: string;
  example?: boolean;
  html?: string;
  form?: string;
}

/** An answer as it comes from the worker: lists are joined by NUL; elsewhere: another engine has it. */
export interface Message extends Said {
  elsewhere?: boolean;
  drawn?: string;
  parts?: string;
  record?: string;
}

/** An answer as a page takes it. */
export interface Reply extends Said {
  parts?: string[];
  record: Pair[];
}

/**
 * Whoever asks an engine: that of the page's section, or the whole one. Of a question that
 * an engine died of, whole is set; of one that it passed on, undo is told.
 */
export interface Asker {
  whole?: boolean;
  near?: boolean;
  undo?(question: Question): void;
  question(): Question;
  take(reply: Reply): void;
}

/** Part of an answer as it was written, and once they were looked up, the nodes of its tokens. */
export interface Written {
  html: string;
  tokens: string[];
  nodes?: (Element | Text | undefined)[];
}

/** A point on a photo, in pixels of it, and how far off it may be each way (95 %). */
export interface Point {
  x: number;
  y: number;
  by: number;
}

/** The bend of a knee in degrees, its ±, and to which side of the thigh the shank turns. */
export interface Bend {
  angle: number;
  margin: number;
  turn: number;
}

/** Something that can be found: a page, a section of it, a word; asked and text are searched and not shown. */
export interface Thing {
  url: string;
  title: string;
  kind: string;
  in?: string;
  says?: string;
  asked?: string[];
  text?: string;
}

/** A field that a number in a question fills in; its range is in base units. */
export interface Opened {
  url: string;
  title: string;
  key: string;
  label: string;
  kind: string;
  range: [number, number];
  said: string[];
}

/** The guide's index, once it was read. */
export interface Index {
  things: Thing[];
  numbers: Opened[];
  split: (text: string) => string[];
  lookup: MiniSearch<{ id: number }>;
  spelling: MiniSearch<{ id: string }>;
  known: Map<string, number>;
  phrases: Set<string>[][];
}

declare global {
  /** Of boot.js: the file of the engine of that name, loaded once unless it is asked for anew, and its texts where the page is not in English. */
  var engineParts: (name: string, anew?: boolean) => Promise<{ engine: Blob; texts: string[] }>;
  interface Navigator {
    connection?: { saveData?: boolean };
  }
  var trustedTypes: { createPolicy<T>(name: string, rules: T): T } | undefined;
}
