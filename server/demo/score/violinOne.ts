/** Violin I of the demo piece, in the notation of `notation.ts`. */
export const VIOLIN_ONE = `
0  {p} {espressivo} D4q
1  G4h.( A4e B4e)
2  D5h( C5q B4q)
3  A4h.( B4e C5e)
4  B4h( G4q) E4qv
5  E5hn( D5q C5q)
6  B4q.( A4e) G4q( D5q)
7  {>} C5h( B4q A4q)
8  {!} G4h. {mp} D5qv
9  G5h.( F#5e E5e)
10 D5h( B4q G4q)
11 {<} C5h.( D5e E5e)
12 {!} D5h( A4h)
13 B4h.( C5e D5e)
14 {>} E5h( G5h)
15 {p} {dolce} D4h( B5h@3)
16 A5q( G5q F#5h)
17 {mp} E5h.( D5e3 E5e3 F#5e3)
18 G5h( F#5q E5q)
19 {<} F#5h.( E5e3 F#5e3 G5e3)
20 {mf} A5h( G5q F#5q)
21 G5h( E5h)
22 {<} A4q( C5q) E5q( A5q)
23 B4s( C5s C#5s D5s D#5s E5s F5s F#5s G5s G#5s A5s A#5s B5s C6s C#6s D6s)
24 {f} Eb6en( C6e A5e F#5e) {>} Eb5e( C5e A4e F#4e)
25 {p} {pizz.} rq D5q rq B4q
26 rq D5q rq A4q
27 rq B4q rq G4q
28 rq D5q rq B4q
29 rq E5q rq C5q
30 rq D5q rq B4q
31 rq E5q rq C5q
32 rq A4q rq {f} {arco} D5ev( F#5e)
33 G5hn( E5q C5q)
34 D5q.( C5e B4h)
35 C5q.( D5e E5q F#5q)
36 F#5h( D#5h)
37 {div.} [E5 G5]h( [C5 E5]h)
38 [B4 D5]h( [A4 C5]h)
39 {>} F#5h( E5h) && C5q( B4q A4h)
40 {!} {unis.} D5h( A4h)
41 {p} {espressivo} B4hn( D5q C5q)
42 B4q.( A4e G4h)
43 {<} D5h( E5q F#5q)
44 G5q.( F#5e E5q) D5qn(
45 {mf} B5h) A5q( G5q)
46 {>} F#5e( A5e D6q) C6q( B5e A5e)
47 {pp} {senza espressione} D5w~(
48 D5w
49 {<} E5w~
50 {>} E5w
51 D5w~
52 {ppp} D5w)
53 {mf} {leggiero} G5q( B5e) A5q( G5e)
54 F#5e' G5e' A5e' D5q.
55 E5q( G5e) F#5q( E5e)
56 D5q. rq D5ev(
57 G5q) B5e D6q( B5e)
58 C6e' B5e' A5e' E5q.
59 {<} A5e( G5e F#5e) E5e( F#5e D5e)
60 {!} G5q. rq.
61 {f} E5e> E5s F#5s G5e F#5e> F#5s G5s A5e
62 G5e> G5s( A5s) B5e B5q.>
63 C6e> B5s A5s G5e A5e> G5s F#5s E5e
64 D#5q.> F#5q.>
65 {<} E5e> E5s F#5s G5e A5e> A5s B5s C6e
66 {ff} B5sn( A#5s A5s G#5s G5s F#5s) F5s( E5s D#5s D5s C#5s C5s)
67 A5e( F#5e D#5e C5e A4e F#4e)
68 {>} B4q. {!} rq {p} D4ev
69 {cantabile} G4q.( A4q B4e)
70 D5q.( C5q B4e)
71 {<} A4q.( B4q C5e)
72 B4q. rq D5ev
73 {f} [G4 G5]q.n( [A4 A5]q) [B4 B5]e
74 [D5 D6]q.( [C5 C6]q) [B4 B5]e
75 [A4 A5]q.( [F#4 F#5]q [D4 D5]e)
76 [G4 G5]h.
77 {ff} G5e' B5e' D6e' G6q.>
78 C6e' A5e' E5e' C5q.>
79 A4s( B4s C5s D5s E5s F#5s) A5q.>
80 [D4 B4 G5]q.>n rq.
81 {p} D5h.(
82 {>} C5h.
83 {pp} B4h.)
84 G5h.^
`;
