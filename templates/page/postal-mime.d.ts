// What mail.js uses of postal-mime.js, which is somebody else's and is not checked itself.

/** What hangs on a mail, decoded. */
export interface Attachment {
  filename: string | null;
  mimeType: string;
  content: ArrayBuffer | Uint8Array | string;
}

/** A mail, with its words decoded. */
export interface Mail {
  subject?: string;
  text?: string;
  html?: string;
  attachments: Attachment[];
}

export default class PostalMime {
  static parse(mail: Uint8Array, options?: { maxRfc822NestingDepth?: number; maxNestingDepth?: number }): Promise<Mail>;
}

/** The words of HTML, and behind each link, in brackets, where it leads. */
export function htmlToText(html: string): string;
