import { useEffect, useRef, useState } from 'react';
import { fetchPrints, type PrintsAsked } from '../../../library/prints.ts';
import { troubleText } from '../../../library/http.ts';
import { words } from '../../../words/words.ts';
import { countArrived } from './arrived.ts';

export interface Making {
  made: number;
  of: number;
}

function keep(name: string, file: Blob): void {
  const address = URL.createObjectURL(file);
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  URL.revokeObjectURL(address);
}

/** Copies in the making: how far they are, how they are stopped; leaving the folder stops them too. */
export function usePrints(work: string, say: (sentence: string | null) => void) {
  const [making, setMaking] = useState<Making | null>(null);
  const running = useRef<AbortController | null>(null);
  useEffect(() => () => running.current?.abort(), []);

  async function make(asked: PrintsAsked, of: number): Promise<void> {
    const stop = new AbortController();
    running.current = stop;
    const arrived = countArrived();
    setMaking({ made: 0, of });
    say(words.prints.making(0, of));
    try {
      const { name, file } = await fetchPrints(work, asked, stop.signal, (chunk) => {
        const made = Math.min(of, arrived(chunk));
        setMaking({ made, of });
        say(words.prints.making(made, of));
      });
      keep(name, file);
      say((asked.form === 'pdf' ? words.prints.made : words.prints.packed)(of, name));
    } catch (fault) {
      say(stop.signal.aborted ? words.prints.stopped : troubleText(fault));
    } finally {
      setMaking(null);
    }
  }

  return { making, make, stop: () => running.current?.abort() };
}
