import { useEffect, useState } from 'preact/hooks';

/** The address of a drawing for as long as it is shown. */
export function useUrl(svg: string | undefined): string | undefined {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (svg === undefined) return setUrl(undefined);
    const made = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  return url;
}
