import { randomBytes } from 'node:crypto';
import { once } from 'node:events';
import { createWriteStream, rmSync } from 'node:fs';
import { rename } from 'node:fs/promises';
import { writerTo } from './console';
import { reasonFor } from './files';

/** A file that is written bit by bit under another name, and takes its place only when it is whole. */
export class WholeFile {
  readonly write: (text: string) => Promise<boolean>;
  private readonly beside: string;
  private readonly stream: ReturnType<typeof createWriteStream>;
  private failure: Error | undefined;
  private readonly drop = () => {
    rmSync(this.beside, { force: true });
    process.exit(130); // As a shell reports a program that was interrupted.
  };

  constructor(private readonly name: string) {
    this.beside = `${name}.${randomBytes(6).toString('hex')}.part`;
    this.stream = createWriteStream(this.beside);
    this.stream.on('error', (error) => {
      this.failure ??= error;
    });
    this.write = writerTo(this.stream);
    process.on('SIGINT', this.drop);
    process.on('SIGTERM', this.drop);
  }

  /** Puts the file in its place; returns what is wrong where it cannot be. */
  async finish(): Promise<string | undefined> {
    try {
      this.stream.end();
      if (!this.failure && !this.stream.closed) {
        await Promise.race([once(this.stream, 'close'), once(this.stream, 'error')]);
      }
      if (this.failure) {
        throw this.failure;
      }
      await rename(this.beside, this.name);
      return undefined;
    } catch (error) {
      rmSync(this.beside, { force: true });
      return `${this.name} cannot be written: it ${reasonFor(error)}`;
    } finally {
      process.off('SIGINT', this.drop);
      process.off('SIGTERM', this.drop);
    }
  }

  /** Leaves no trace. */
  abandon(): void {
    this.stream.destroy();
    rmSync(this.beside, { force: true });
    process.off('SIGINT', this.drop);
    process.off('SIGTERM', this.drop);
  }
}
