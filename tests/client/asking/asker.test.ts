import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { answer } from '../../../client/asking/answer.ts';
import { asker } from '../../../client/asking/asker.ts';
import type { FromWorker, ToWorker } from '../../../client/asking/messages.ts';
import { partOf } from '../../support/partBuilder.ts';

const part = partOf('D5:1 E5:1 |');

/** A worker that answers in this very thread when it is told to. */
class Desk {
  onmessage: ((event: { data: FromWorker<string> }) => void) | null = null;
  ended = false;
  waiting: ToWorker<string>[] = [];
  say(message: FromWorker<string>): void {
    this.onmessage!({ data: message });
  }
  postMessage(message: ToWorker<string>): void {
    this.waiting.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
}

describe('a question to a worker', () => {
  let desks: Desk[] = [];
  const engine = () => asker<string, string>(part, () => desks[desks.push(new Desk()) - 1] as unknown as Worker);
  beforeEach(() => {
    desks = [];
  });

  it('hears the answers that stand for now, then the last one', async () => {
    const heard: string[] = [];
    const last = engine().ask('who?', (soFar) => heard.push(soFar));
    desks[0]!.say({ kind: 'soFar', job: 1, found: 'Ida' });
    desks[0]!.say({ kind: 'soFar', job: 1, found: 'Ivo' });
    desks[0]!.say({ kind: 'found', job: 1, found: 'Ada' });
    expect([heard, await last]).toEqual([['Ida', 'Ivo'], 'Ada']);
  });

  it('that is dropped is answered with nothing and ends the worker; a resting worker stays', async () => {
    const asking = engine();
    const dropped = asking.ask('who?');
    asking.drop();
    expect([await dropped, desks[0]!.ended]).toEqual([null, true]);
    const second = asking.ask('who now?');
    desks[1]!.say({ kind: 'found', job: 2, found: 'Ada' });
    await second;
    asking.drop();
    expect(desks[1]!.ended).toBe(false);
  });

  it('does not hear what belongs to an earlier question', () => {
    const heard: string[] = [];
    void engine().ask('who?', (soFar) => heard.push(soFar));
    desks[0]!.say({ kind: 'soFar', job: 7, found: 'somebody' });
    expect(heard).toEqual([]);
  });
});

describe('the worker’s side', () => {
  const posted: FromWorker<string>[] = [];
  const port = globalThis as unknown as { onmessage: (event: { data: ToWorker<string> }) => void };
  beforeEach(() => {
    posted.length = 0;
    vi.stubGlobal('postMessage', (message: FromWorker<string>) => posted.push(message));
    vi.stubGlobal('onmessage', null);
  });
  afterEach(() => vi.unstubAllGlobals());

  it('answers about the part it was given, says what it has on the way, and says what went wrong', () => {
    answer<string, string>((known, question, onSoFar) => {
      if (question === 'bad') throw new Error('no such note');
      onSoFar('perhaps');
      return `${question} ${known.measures.length}`;
    });
    port.onmessage({ data: { kind: 'ask', job: 1, question: 'early' } });
    port.onmessage({ data: { kind: 'part', part } });
    port.onmessage({ data: { kind: 'ask', job: 2, question: 'measures' } });
    port.onmessage({ data: { kind: 'ask', job: 3, question: 'bad' } });
    expect(posted).toEqual([
      { kind: 'soFar', job: 2, found: 'perhaps' },
      { kind: 'found', job: 2, found: `measures ${part.measures.length}` },
      { kind: 'failed', job: 3, why: 'Error: no such note' },
    ]);
  });
});
