// Runs the built engine in Node: one question a line on standard input, one
// reply a line on standard output.
//   node driver.mjs wasm_exec.js engine.wasm [texts ...]
import { readFile } from "node:fs/promises";
import { createInterface } from "node:readline";
import { pathToFileURL } from "node:url";

const [exec, engine, ...texts] = process.argv.slice(2);
await import(pathToFileURL(exec));
const go = new globalThis.Go();
go.env = { GOGC: "400" };
const { instance } = await WebAssembly.instantiate(await readFile(engine), go.importObject);
go.run(instance).then(() => {
  process.stderr.write("the engine ended\n");
  process.exit(3);
});
for (const file of texts) {
  if (!globalThis.plumbline.learn(await readFile(file, "utf8"))) throw new Error(`${file} was not read`);
}
for await (const line of createInterface({ input: process.stdin })) {
  process.stdout.write(JSON.stringify(globalThis.plumbline.answer(...JSON.parse(line))) + "\n");
}
process.exit(0);
