import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** The SHA-256 of claims as JSON writes them, in hexadecimal: it tells whether they were changed since, not by whom. */
export const digestOf = (claims: object): string => bytesToHex(sha256(utf8ToBytes(JSON.stringify(claims))));
