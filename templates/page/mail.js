// Takes a mail apart. What is found stays on this device; nothing that a mail names is loaded.
import { kindOf, textOf } from "./kind.js";
import { isMail } from "./mailbox.js";
import PostalMime, { htmlToText } from "./postal-mime.js";

// The bounds of one mail, as the command has them: a reply is short, and the rest of a long
// mail is photos.
const longestMail = 40 * 2 ** 20, longestPart = 4 * 2 ** 20, deepest = 6;

/**
 * A mail as the desk's question “mail” takes it: its subject, what hangs on it and is no
 * reply, and each text in it.
 * @param {Uint8Array} bytes
 * @param {number} [depth] in how many mails it stands
 * @returns {Promise<string[]>}
 */
export async function partsOf(bytes, depth = 0) {
  const mail = await PostalMime.parse(bytes.subarray(0, longestMail), { maxRfc822NestingDepth: deepest, maxNestingDepth: 32 });
  const texts = [mail.text, mail.html && htmlToText(mail.html.slice(0, longestPart))].filter((text) => text !== undefined);
  let other = "";
  for (const { content } of mail.attachments) {
    const own = typeof content === "string" ? new TextEncoder().encode(content) : new Uint8Array(content);
    const kind = kindOf(own), text = kind ? "" : textOf(own.subarray(0, longestPart));
    if (kind) other ||= kind;
    else if (isMail(text) && depth < deepest) {
      const [, hangs, ...inner] = await partsOf(own, depth + 1);
      other ||= hangs;
      texts.push(...inner);
    } else texts.push(text);
  }
  return [mail.subject ?? "", other, ...texts].map((text) => text.slice(0, longestPart).replaceAll("\0", " "));
}
