import * as vscode from 'vscode';
import { includes, until } from './expect';

type Show = (message: string, ...rest: unknown[]) => Thenable<unknown>;

const ways = ['showInformationMessage', 'showWarningMessage', 'showErrorMessage'] as const;

/** What the extension tells a person from now on; the suite and the extension see one and the same API. */
export class Heard {
  readonly said: string[] = [];
  private readonly before = ways.map((way) => [way, vscode.window[way]] as const);

  /** Each message is closed without an answer, or by a press on the button that is named. */
  constructor(press?: string) {
    const show: Show = (message, ...rest) => {
      this.said.push(message);
      return Promise.resolve(rest.find((button) => button === press));
    };
    for (const way of ways) {
      (vscode.window as unknown as Record<string, Show>)[way] = show;
    }
  }

  /** Waits for a message that holds each part. */
  async hears(...parts: readonly string[]): Promise<void> {
    const message = await until(`a message with ${parts[0]}`, () => this.said.find((one) => one.includes(parts[0])));
    for (const part of parts) {
      includes(message, part);
    }
  }

  stop(): void {
    Object.assign(vscode.window, Object.fromEntries(this.before));
  }
}

/** Runs something and gives what a person was told meanwhile. */
export async function heardWhile(
  doing: (heard: Heard) => Thenable<unknown>,
  press?: string,
): Promise<readonly string[]> {
  const heard = new Heard(press);
  try {
    await doing(heard);
    return heard.said;
  } finally {
    heard.stop();
  }
}
