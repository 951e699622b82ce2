// A request with a JSON body, its types stated by whoever asks.

export interface Answered<T> {
  status: number;
  body: T;
}

export async function send<T>(method: string, address: string, body: unknown, key?: string): Promise<Answered<T>> {
  const answer = await fetch(address, {
    method,
    headers: { "content-type": "application/json", ...(key === undefined ? {} : { authorization: `Bearer ${key}` }) },
    body: JSON.stringify(body),
  });
  return { status: answer.status, body: (await answer.json()) as T };
}

export function expectStatus(what: string, { status, body }: Answered<unknown>, expected: number): void {
  if (status !== expected) throw new Error(`${what}: ${status} instead of ${expected}, ${JSON.stringify(body)}`);
}
