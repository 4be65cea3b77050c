// What the worker finds at globalThis, for the compiler alone. Nothing here is published.

/** Of wasm_exec.js, which comes with Go: runs a program that was compiled for js/wasm. */
interface Go {
  env: Record<string, string>;
  importObject: WebAssembly.Imports;
  run(instance: WebAssembly.Instance): Promise<void>;
}

declare var Go: new () => Go;

/** What the engine offers once it runs; see wasm/engine. */
declare var plumbline: { answer(question: object): object; learn(texts: string): boolean; rest(): void } | undefined;
