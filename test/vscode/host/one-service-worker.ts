import type { BrowserContext } from 'playwright-core';

/**
 * Has all web views use one service worker. VS Code 1.100 registers one for each web view (1.90 does not), and where all of
 * them are on one origin, as here, each has to wait a second until the one before gives way. It never does while a web
 * view that was closed early has left a question with it that nobody answers: then no notebook is shown for half a minute
 * or at all. A person rarely closes a notebook that fast; tests do.
 */
export const useOneServiceWorker = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript({ content: inFrame });

/** What each frame runs before its own scripts; as text, for what is compiled here knows names that it does not. */
const inFrame = `if (location.pathname.includes('/webview/browser/pre/') && navigator.serviceWorker) {
  const forAll = (path) => path.replace(/&id=[^&]*/, '');
  let asked = '';
  const { register } = ServiceWorkerContainer.prototype;
  ServiceWorkerContainer.prototype.register = function (path, options) {
    asked = String(path);
    return register.call(this, forAll(asked), options);
  };
  // The web view asks whether the worker is the one that it registered.
  const { get } = Object.getOwnPropertyDescriptor(ServiceWorker.prototype, 'scriptURL');
  Object.defineProperty(ServiceWorker.prototype, 'scriptURL', {
    get() {
      const url = get.call(this);
      return asked && url.endsWith(forAll(asked)) ? new URL(asked, location).href : url;
    },
  });
}`;
