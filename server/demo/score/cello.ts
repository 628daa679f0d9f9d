/** Violoncello of the demo piece, in the notation of `notation.ts`. */
export const CELLO = `
0  rq
1  {p} G2w
2  B2h( C3h)
3  F#2h( D2h)
4  G2h( E2h)
5  C3h( A2h)
6  D3h( E3h)
7  {>} A2h( D2h)
8  {!} G2w
9  {mp} G3h( E3h)
10 B2w
11 {<} C3h( A2h)
12 {!} D3h( F#2h)
13 G3h( F3h)
14 {>} E3h( Eb3h)
15 {p} D3w
16 D3h( D2h)
17 {mp} E3h( D3h)
18 C3h( C#3h)
19 {<} D3h( D#3h)
20 {mf} B2h( D#3h)
21 E3h( C3h)
22 {<} A2w
23 D3w>~
24 {f} {>} D3w
25 {mf} {espressivo} G3q.n( B3e D4h)
26 A3q.( B3e A3h)
27 G3q.( A3e B3h)
28 F#3q.( E3e D3h)
29 {<} E3q.( G3e C4h)
30 B3q.( C4e D4h)
31 {>} C4q( B3q A3q G3q)
32 {!} F#3h( A3h)
33 {f} G2h( C3h)
34 B2h( E3h)
35 A2h( D3h)
36 B2w
37 E3h( C3h)
38 D3w
39 {>} D3w
40 {!} D3w
41 {p} G2h.( A2q)
42 B2h( C3h)
43 {<} D3h( C#3q D3q)
44 E3h( A2q D3q)
45 {mf} G3h( F#3q E3q)
46 {>} D3h( F#3h)
47 {pp} G2w
48 E2w
49 {<} C3w
50 {>} A2w
51 D3w~
52 {ppp} D3w
53 {mf} G2q.' D3q.'
54 D3q.' F#3q.'
55 C3q.' A2q.'
56 G2q.' B2q.'
57 G2q.' B2q.'
58 A2q.' C3q.'
59 {<} D3q.' D3q.'
60 {!} G2q. rq.
61 {f} E3q.> D#3q.>
62 E3q.> E2q.>
63 C3q.> A2q.>
64 B2q.> B2q.>
65 {<} E3q.> A2q.>
66 {ff} B2h.~
67 B2h.
68 {>} B2q. {!} rq.
69 {p} G2h.
70 B2q.( C3q.)
71 {<} D3h.
72 G2h.
73 {f} G3q.( F#3q.)
74 B2q.( A2q.)
75 D3h.
76 G2h.
77 {ff} G2q.> G3q.>
78 C3q.> A2q.>
79 D3q.> D3q.>
80 [G2 D3]q.>n rq.
81 {p} G2h.
82 {>} D3h.
83 {pp} G2h.~
84 G2h.^
`;
