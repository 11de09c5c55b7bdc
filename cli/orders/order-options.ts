import { Option } from 'commander';

/** `--store DIR`. */
export const storeOption = (): Option =>
  new Option('--store <folder>', 'the folder, or mount, that senders and workers share');

/** `--to URL`. */
export const toOption = (): Option =>
  new Option('--to <url>', 'the NATS server that hands chunks to workers, such as nats://127.0.0.1:4222');

/** `--creds FILE`. */
export const credsOption = (): Option =>
  new Option(
    '--creds <file>',
    'who one is to the server; else BODKIN_NATS_CREDS names the file, or BODKIN_NATS_USER and BODKIN_NATS_PASSWORD, or BODKIN_NATS_TOKEN, say it',
  );
