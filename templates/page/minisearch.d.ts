// What the search uses of minisearch.js, which is somebody else's and is not checked itself.

/** How texts and questions are cut, and what a question may differ in. */
export interface Options {
  tokenize?: (text: string) => string[];
  processTerm?: (term: string) => string;
  boost?: Record<string, number>;
  bm25?: { k: number; b: number; d: number };
  fuzzy?: number;
}

/** One document that was found; terms are the words of the index that matched. */
export interface Hit<Id> {
  id: Id;
  score: number;
  terms: string[];
}

export default class MiniSearch<D extends { id: unknown }> {
  constructor(options: { fields: string[]; searchOptions?: Options } & Options);
  add(document: D & Record<string, unknown>): void;
  addAll(documents: (D & Record<string, unknown>)[]): void;
  search(query: string, options?: Options): Hit<D["id"]>[];
}
