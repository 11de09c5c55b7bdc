/** What is used of the NATS client, by name: bundled, a library of the older kind tells its names only where they are asked for like this. */
export { jetstream, jetstreamManager } from '@nats-io/jetstream';
export { connect, credsAuthenticator } from '@nats-io/transport-node';
