/** How far something is that takes long, from 0 to 1. */
export const Progress = ({ share, label }: { share: number; label: string }) => (
  <progress max={1} value={share} aria-label={label}>
    {Math.round(100 * share)} %
  </progress>
);
