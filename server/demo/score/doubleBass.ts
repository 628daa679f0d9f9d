/** Double bass of the demo piece as written (an octave above its sound), in the notation of `notation.ts`. */
export const DOUBLE_BASS = `
0  rq
1  {p} {pizz.} G2q rq rh
2  B2q rq C3q rq
3  F#2q rq D3q rq
4  G2q rq E2q rq
5  C3q rq A2q rq
6  D3q rq E3q rq
7  A2q rq D3q rq
8  G2q rq rh
9  {mp} {arco} G3h( E3h)
10 B2w
11 {<} C3h( A2h)
12 {!} D3h( F#2h)
13 G3h( F3h)
14 {>} E3h( Eb3h)
15 {p} D3w
16 D3w
17 {mp} E3h( D3h)
18 C3h( C#3h)
19 {<} D3h( D#3h)
20 {mf} B2w
21 E3h( C3h)
22 {<} A2w
23 D3w>~
24 {f} {>} D3w
25 {p} {pizz.} G2q rq D3q rq
26 F#2q rq A2q rq
27 E2q rq B2q rq
28 B2q rq F#2q rq
29 C3q rq G2q rq
30 B2q rq D3q rq
31 A2q rq E2q rq
32 D3q rq A2q rq
33 {f} {arco} G2h C3h
34 B2h E2h
35 A2h D3h
36 B2w
37 E2h C3h
38 D3w
39 {>} D3w
40 {!} D3w
41 {p} G2h.( A2q)
42 B2h( C3h)
43 {<} D3h( C#3q D3q)
44 E3h( A2q D3q)
45 {mf} G2h( F#2q E2q)
46 {>} D3h( F#2h)
47 {pp} G2w
48 E2w
49 {<} C3w
50 {>} A2w
51 D3w~
52 {ppp} D3w
53 {mf} {pizz.} G2q re D3q re
54 D3q re F#2q re
55 C3q re A2q re
56 G2q re B2q re
57 G2q re B2q re
58 A2q re C3q re
59 {<} D3q re D3q re
60 {!} G2q re rq.
61 {f} {arco} E3q.> D#3q.>
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
80 G2q.>n rq.
81 {p} G2h.
82 {>} D3h.
83 {pp} G2h.~
84 G2h.^
`;
