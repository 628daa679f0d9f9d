import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { fingerer } from '../../../client/fingering/fingerer.ts';
import type { FromWorker, ToWorker } from '../../../client/asking/messages.ts';
import type { Offers, Question } from '../../../client/fingering/messages.ts';
import { partOf } from '../../support/partBuilder.ts';

class Stage {
  static all: Stage[] = [];
  onmessage: ((event: { data: FromWorker<Offers> }) => void) | null = null;
  onerror: ((event: { message: string }) => void) | null = null;
  heard: ToWorker<Question>[] = [];
  ended = false;
  constructor() {
    Stage.all.push(this);
  }
  postMessage(message: ToWorker<Question>): void {
    this.heard.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  get job(): number {
    return this.heard.reduce((last, message) => (message.kind === 'ask' ? message.job : last), 0);
  }
}

const part = partOf('D5:1 E5:1 |');
const question: Question = { from: 'a', to: 'b', aim: 'usual', pencilled: [], standing: [], openStrings: 'free', hand: null, players: 1, assumedTempo: 90, language: 'en' };
const found: Offers = { offers: [], pairs: [], refusals: [] };

describe('the fingering engine beside the page', () => {
  beforeEach(() => {
    Stage.all = [];
    vi.stubGlobal('Worker', Stage);
  });
  afterEach(() => vi.unstubAllGlobals());

  it('is begun with the first question, not before', () => {
    const engine = fingerer(part);
    expect(Stage.all).toHaveLength(0);
    void engine.ask(question);
    expect(Stage.all[0]!.heard.map(({ kind }) => kind)).toEqual(['part', 'ask']);
  });

  it('stops at a new question: the old one is answered with nothing, the new one by another worker', async () => {
    const engine = fingerer(part);
    const [one, two] = [engine.ask(question), engine.ask({ ...question, aim: 'secure' })];
    expect(await one).toBeNull();
    expect(Stage.all.map(({ ended }) => ended)).toEqual([true, false]);
    Stage.all[1]!.onmessage!({ data: { kind: 'found', job: Stage.all[1]!.job, found } });
    expect(await two).toBe(found);
  });

  it('keeps its worker from question to question while none waits', async () => {
    const engine = fingerer(part);
    for (let i = 0; i < 2; i++) {
      const answer = engine.ask(question);
      Stage.all[0]!.onmessage!({ data: { kind: 'found', job: Stage.all[0]!.job, found } });
      expect(await answer).toBe(found);
    }
    expect(Stage.all).toHaveLength(1);
  });

  it('that could not be loaded says so, and is begun anew with the next question', async () => {
    const engine = fingerer(part);
    const first = engine.ask(question);
    Stage.all[0]!.onerror!({ message: 'not found' });
    await expect(first).rejects.toThrow('not found');
    const second = engine.ask(question);
    expect(Stage.all).toHaveLength(2);
    Stage.all[1]!.onmessage!({ data: { kind: 'found', job: Stage.all[1]!.job, found } });
    expect(await second).toBe(found);
  });
});
