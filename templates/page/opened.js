// Opens what a fitter dropped, picked or pasted: replies, mails, mailboxes and notes.
import { ask } from "./desk.js";
import { kindOf, plainly, textOf } from "./kind.js";
import { isMail, mailsOf } from "./mailbox.js";
import { counted, t } from "./text.js";
/** @import { Read } from "./types.d.ts" */

// Bytes of a file that is opened: of a reply, and of a mail or a mailbox.
const most = 2 ** 20, mostMail = 2 ** 28, mostHead = 2 ** 16;

/** @returns {Read} */
const nothing = () => ({ list: [], problems: [], notes: [] });

/**
 * The records in a file of mails, and what is to be said of those without one.
 * @param {string} name
 * @param {Uint8Array} bytes
 * @param {HTMLElement} desk
 */
async function mails(name, bytes, desk) {
  const { partsOf } = await import("./mail.js"), many = [...mailsOf(bytes)], read = nothing();
  for (const [i, mail] of many.entries()) { // one after the other, so that few are in memory
    const called = many.length > 1 ? t("{0}, mail {1}", name, i + 1) : name;
    try {
      const parts = await partsOf(mail);
      const { text = "", problems = [], error } = await ask(desk, "mail", { record: "", text: parts.join("\0") });
      if (text) for (const found of text.split("\0")) read.list.push([called, found]);
      else read.problems.push(`${called}: ${error ?? problems[0]?.message}`);
    } catch {
      read.problems.push(t("{0}: this mail cannot be read.", called));
    }
  }
  // A mailbox is full of other mail, of which nobody wants to read.
  if (read.problems.length > 3) read.problems = [counted(read.problems.length, "{1}: {0} mail holds no measurements.", "{1}: {0} mails hold no measurements.", name)];
  return read;
}

/**
 * Opens a file of any kind.
 * @param {File} sent
 * @param {HTMLElement} desk
 */
async function open(sent, desk) {
  const { name, size } = sent, bytes = async () => new Uint8Array(await sent.arrayBuffer());
  const head = new Uint8Array(await sent.slice(0, mostHead).arrayBuffer()), kind = kindOf(head), mail = !kind && isMail(textOf(head));
  const read = nothing();
  if (kind) read.problems.push(t("{0} is {1} and no reply.", name, kind));
  else if (mail && size > mostMail) read.problems.push(t("{0} is too large for a page. The command plumbline intake reads it.", name));
  else if (!mail && size > most) read.problems.push(t("{0} is larger than a reply can be.", name));
  else if (mail) return mails(name, plainly(await bytes()), desk);
  else read[/\.ya?ml$/iu.test(name) ? "notes" : "list"].push([name, textOf(await bytes())]);
  return read;
}

/**
 * Opens files, in their order.
 * @param {Iterable<File>} files
 * @param {HTMLElement} desk
 */
export async function openFiles(files, desk) {
  const all = nothing();
  for (const sent of files) {
    const { list, problems, notes } = await open(sent, desk);
    all.list.push(...list);
    all.problems.push(...problems);
    all.notes.push(...notes);
  }
  return all;
}

/**
 * Opens a text that was pasted or dragged, which may be a mail as its program keeps it.
 * @param {string} name
 * @param {string} text
 * @param {HTMLElement} desk
 * @returns {Promise<Read>}
 */
export async function openText(name, text, desk) {
  const own = text.trimStart();
  return isMail(own) ? mails(name, new TextEncoder().encode(own), desk) : { ...nothing(), list: [[name, text]] };
}
