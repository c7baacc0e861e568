import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { writeReport } from '../core';
import type { ToEditor, ToWorker } from './write-apart';

/** So many milliseconds pass at least between two messages on how far it is. */
const pause = 100;

/** A thread that writes one report and ends, so that a long one keeps nobody from typing. */
async function write({ document, format, fonts }: ToWorker): Promise<void> {
  const say = (message: ToEditor, give: ArrayBuffer[] = []) => parentPort!.postMessage(message, give);
  let told = Number.NEGATIVE_INFINITY;
  const bytes = await writeReport(document, format, {
    font: (name) => readFile(join(fonts, name)),
    progress: (step) => {
      const now = performance.now();
      if (now - told >= pause) {
        told = now;
        say({ step });
      }
    },
  });
  const whole = bytes.byteLength === bytes.buffer.byteLength ? bytes : bytes.slice();
  say({ bytes: whole }, [whole.buffer as ArrayBuffer]);
}

void write(workerData as ToWorker);
