import type { Heard } from './messages.ts';
import { noteAt } from './noteAt.ts';

export interface Listener {
  onNote(note: string | null): void;
  onEnd(): void;
}

export interface Loudspeaker {
  /** To be called from a key or a touch: a browser lets a page sound only then. */
  wake(): void;
  play(heard: Heard, loop: boolean, listener: Listener): void;
  setLoop(loop: boolean): void;
  stop(): void;
  close(): void;
}

/** Plays samples through the browser, one passage at a time, and says which note sounds. Begun with the first sound. */
export function loudspeaker(): Loudspeaker {
  let context: AudioContext | null = null;
  let source: AudioBufferSourceNode | null = null;
  let frame = 0;
  const begun = (): AudioContext => (context ??= new AudioContext());
  const stop = (): void => {
    cancelAnimationFrame(frame);
    if (source) source.onended = null;
    source?.stop();
    source?.disconnect();
    source = null;
  };
  return {
    wake() {
      void begun().resume();
    },
    play({ samples, rate, notes }, loop, { onNote, onEnd }) {
      stop();
      const sounding = begun();
      const buffer = sounding.createBuffer(1, samples.length, rate);
      buffer.copyToChannel(samples, 0);
      source = sounding.createBufferSource();
      source.buffer = buffer;
      source.loop = loop;
      source.connect(sounding.destination);
      source.onended = () => {
        stop();
        onEnd();
      };
      source.start();
      const startedAt = sounding.currentTime;
      let shown: string | null = null;
      const follow = (): void => {
        const note = noteAt(notes, (sounding.currentTime - startedAt) % buffer.duration);
        if (note !== shown) onNote((shown = note));
        frame = requestAnimationFrame(follow);
      };
      frame = requestAnimationFrame(follow);
    },
    setLoop(loop) {
      if (source) source.loop = loop;
    },
    stop,
    close() {
      stop();
      void context?.close();
      context = null;
    },
  };
}
