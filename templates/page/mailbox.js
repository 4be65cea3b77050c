// Knows mails as mail programs save them: one a file, or a mailbox of many.

const mostHeader = 2 ** 13;
/** The name of a header field (RFC 5322, 2.2), and fields that every mail has one of. */
const field = /^[!-9;-~]{2,60}:[ \t]/, common = /^(received|return-path|mime-version|message-id|delivered-to|from|to|subject|date):[ \t]/gim;

/** @param {Uint8Array} bytes */
const headOf = (bytes) => new TextDecoder("latin1").decode(bytes.subarray(0, mostHeader));

/**
 * Whether a text begins with the header of a mail.
 * @param {string} text
 */
export const beginsMail = (text) => field.test(text) && (text.split(/\r?\n\r?\n/u, 1)[0].match(common)?.length ?? 0) > 1;

/**
 * Whether a text is a mail, or a mailbox of several.
 * @param {string} text
 */
export const isMail = (text) => text.startsWith("From ") ? beginsMail(text.slice(text.indexOf("\n") + 1)) : beginsMail(text);

/**
 * The mails of a file. In a mailbox a mail begins behind a line with “From ” (RFC 4155); a
 * line of a text that begins so is known by what follows it, which is no header.
 * @param {Uint8Array} bytes
 */
export function* mailsOf(bytes) {
  if (!headOf(bytes.subarray(0, 5)).startsWith("From ")) {
    yield bytes;
    return;
  }
  const line = (/** @type {number} */ from) => {
    const end = bytes.indexOf(10, from);
    return end < 0 ? bytes.length : end + 1;
  };
  let began = line(0);
  for (let at = bytes.indexOf(70, began); at >= 0; at = bytes.indexOf(70, at + 1)) { // an F
    if (bytes[at - 1] !== 10 || !headOf(bytes.subarray(at, at + 5)).startsWith("From ")) continue;
    const next = line(at);
    if (!beginsMail(headOf(bytes.subarray(next)))) continue;
    yield bytes.subarray(began, at);
    began = next;
  }
  yield bytes.subarray(began);
}
