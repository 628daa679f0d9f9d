import type { AddressInfo } from 'node:net';
import { SMTPServer } from 'smtp-server';

/** A real SMTP server on a free port that keeps every letter, unless it is told to refuse. */
export class Letterbox {
  readonly letters: { to: string[]; text: string }[] = [];
  refusing = false;
  #server = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS'],
    onData: (stream, session, done) => {
      const pieces: Buffer[] = [];
      stream.on('data', (piece: Buffer) => pieces.push(piece));
      stream.on('end', () => {
        if (this.refusing) return done(new Error('The box is full'));
        this.letters.push({ to: session.envelope.rcptTo.map(({ address }) => address), text: Buffer.concat(pieces).toString('utf8') });
        return done();
      });
    },
  });
  async open(): Promise<string> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    return `smtp://127.0.0.1:${(this.#server.server.address() as AddressInfo).port}`;
  }
  close(): Promise<void> {
    return new Promise((resolve) => this.#server.close(() => resolve()));
  }
}

/** A letter as it is read: its head, and its words whatever they were wrapped in. */
export function decoded(raw: string): string {
  const [head = '', ...body] = raw.split(/\r\n\r\n/);
  const text = body.join('\n\n');
  const quoted = (one: string) => Buffer.from(one.replace(/=\r?\n/g, '').replace(/=([0-9A-F]{2})/g, (_, byte: string) => String.fromCharCode(parseInt(byte, 16))), 'latin1').toString('utf8');
  return `${head}\n\n${/base64/i.test(head) ? Buffer.from(text, 'base64').toString('utf8') : /quoted-printable/i.test(head) ? quoted(text) : text}`;
}
