let asked: Promise<boolean> | undefined;

/**
 * Asks the browser, once, never to clear away by itself what is kept here. To be called at the first edit: a browser
 * that asks the person should have a reason on the screen.
 *
 * @returns  whether it promised; a browser without the question never does.
 */
export function askToKeep(): Promise<boolean> {
  asked ??= navigator.storage?.persist?.().catch(() => false) ?? Promise.resolve(false);
  return asked;
}
