import type { Trouble } from '../../core/agreement/wire/http.ts';

/** Bad input at the edge on its way to the one handler that answers it. */
export class TroubleAnswer extends Error {
  override name = 'TroubleAnswer';
  readonly status: number;
  readonly body: Trouble;

  constructor(status: number, body: Trouble) {
    super(body.text);
    this.status = status;
    this.body = body;
  }
}

export const trouble = (status: number, code: string, text: string): TroubleAnswer => new TroubleAnswer(status, { code, text });

export const notFound = (what: string): TroubleAnswer => trouble(404, 'NOT_THERE', `The library has no such ${what}. It may have been an old address: go back to the shelf and open it from there.`);
