import { useEffect } from 'preact/hooks';

/**
 * Does something once the view stands, where it is wanted. What is sent from within an effect would draw the view anew while
 * it is being drawn; so it waits until that is done.
 */
export function useLater(wanted: boolean, act: () => void, deps: readonly unknown[]): void {
  useEffect(() => {
    if (!wanted) return;
    const waiting = setTimeout(act, 0);
    return () => clearTimeout(waiting);
  }, [wanted, ...deps]);
}
