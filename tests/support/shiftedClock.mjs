import { readFileSync } from 'node:fs';

// Loaded before anything else (`node --import`): the time of day is moved by as many milliseconds as stand in the file that SHIFTED_CLOCK names,
// read anew at every look, so that a test moves it while the process runs. What measures spans (performance.now, timers) goes on as before.
const file = process.env.SHIFTED_CLOCK;
const RealDate = Date;
const now = () => RealDate.now() + Number(readFileSync(file, 'utf8'));

globalThis.Date = new Proxy(RealDate, {
  construct: (target, given, self) => Reflect.construct(target, given.length ? given : [now()], self),
  apply: () => new RealDate(now()).toString(),
  get: (target, name, self) => (name === 'now' ? now : Reflect.get(target, name, self)),
});
