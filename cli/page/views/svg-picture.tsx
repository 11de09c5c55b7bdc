import { useEffect, useState } from 'preact/hooks';

/** A drawing written elsewhere, as large as there is room for, with its words for who cannot see it. */
export function SvgPicture({ svg, words }: { svg: string; words: string }) {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  return <div class="plate">{url && <img src={url} alt={words} />}</div>;
}
