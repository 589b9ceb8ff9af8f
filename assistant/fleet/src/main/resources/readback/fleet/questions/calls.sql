-- Real work whose record holds: what all questions are about. Practice, damaged and forked sessions take no part.
SELECT * FROM sessions WHERE NOT practice AND fault = '' AND NOT forked
