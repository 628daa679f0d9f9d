// Somebody at their stand, in a thread of their own, so that what the attacker's side costs is not taken for the server's slowness.
import { randomUUID } from 'node:crypto';
import { Agent, request } from 'node:http';
import { setTimeout as pause } from 'node:timers/promises';
import { parentPort, workerData } from 'node:worker_threads';

const { port, cookie, part, other } = workerData;
const agent = new Agent({ keepAlive: true, maxSockets: 1 });

function ask(method, path, body) {
  const payload = body === undefined ? undefined : JSON.stringify(body);
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, method, agent, headers: { cookie, ...(payload ? { 'content-type': 'application/json' } : {}) } }, (answer) => {
      answer.resume().once('end', () => (answer.statusCode === 200 ? resolve() : reject(new Error(`${method} ${path}: ${answer.statusCode}`))));
    });
    asked.once('error', reject);
    asked.end(payload);
  });
}

/** One turn at the stand: opens a part, reads its log, says something on another, so that what is read stays as long as it is. */
async function turn() {
  const begun = performance.now();
  await ask('GET', `/api/parts/${part}`);
  await ask('GET', `/api/parts/${part}/log?after=0`);
  await ask('POST', `/api/parts/${other}/operations/comment`, { operation: randomUUID(), input: { id: randomUUID(), measure: 1, text: 'Again from here?' } });
  return performance.now() - begun;
}

/** Between two turns: nobody asks more often than the library lets one person ask in a minute. */
const BREATH = 80;

let watching = false;
parentPort.on('message', async (message) => {
  if (message === 'stop') return void (watching = false);
  watching = true;
  const times = [];
  try {
    while (watching || times.length < message.least) {
      await pause(BREATH);
      times.push(await turn());
      if (times.length === message.least) parentPort.postMessage({ enough: true });
    }
    parentPort.postMessage({ times });
  } catch (reason) {
    parentPort.postMessage({ failed: String(reason) });
  }
});
