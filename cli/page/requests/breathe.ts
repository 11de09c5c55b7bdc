/** Lets the worker hear what came meanwhile. */
export const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));
