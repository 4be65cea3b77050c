// Asks the guide's index as the page does: the module's folder and the index are the
// arguments, the questions come one a line, and for each the first three addresses go out.
import { readFileSync } from "node:fs";

const [folder, index] = process.argv.slice(2);
const { readIndex, search } = await import(`${folder}/search.js`);
const read = await readIndex(readFileSync(index, "utf8"));
for (const query of readFileSync(0, "utf8").split("\n")) {
  const { opens, found } = search(read, query);
  const urls = found.map(({ thing }) => thing.url);
  if (opens) urls.unshift(`${opens.field.url}&${opens.field.key}=${opens.value}`);
  console.log(urls.slice(0, 3).join(" "));
}
