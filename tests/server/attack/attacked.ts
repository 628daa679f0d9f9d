import { afterAll, beforeAll, expect } from 'vitest';
import { answeredBeside, besideOthers, createBystander, SLOWEST, type Beside, type Bystander } from './besideOthers.ts';
import { openScene, type Scene } from './scene.ts';

/** A machine that runs other tests beside these measures nothing: `BOWLINE_BESIDE=measure`, or `npm run bench:attack`, holds others' answers to twice their usual time. */
const MEASURED = process.env.BOWLINE_BESIDE === 'measure';

/** A scene for the tests of a file; afterwards the server is there still, and what it said holds no fault. */
export function attacked(): { scene: () => Scene; whileOthersPlay(name: string, strike: () => Promise<void>): Promise<void> } {
  let scene: Scene;
  let bystander: Bystander;
  const told: [string, Beside][] = [];
  beforeAll(async () => {
    scene = await openScene();
    bystander = createBystander(scene);
  });
  afterAll(async () => {
    await bystander?.close();
    const alive = scene && (await scene.send("/api/health").then(({ status }) => status, String));
    await scene?.close();
    for (const [name, { ratio, p95, quiet, turns, strikes }] of told) console.log(`${ratio.toFixed(2)} (p95 ${p95.toFixed(2)}; quiet ${quiet.toFixed(1)} ms, ${turns} turns beside ${strikes} strikes)  ${name}`);
    if (alive !== 200) console.log(await Promise.race([scene.server.ended, "still"]), scene.server.lines.slice(-20).join("\n"));
    expect(alive).toBe(200);
    expect(scene.server.lines.filter((line) => line.includes('Fault "'))).toEqual([]);
  });
  return {
    scene: () => scene,
    async whileOthersPlay(name, strike) {
      if (!MEASURED) return answeredBeside(bystander, strike);
      const beside = await besideOthers(bystander, strike);
      told.push([name, beside]);
      expect(beside.ratio, `${name}: others answered ${beside.ratio.toFixed(2)} times as slowly`).toBeLessThan(SLOWEST);
    },
  };
}
