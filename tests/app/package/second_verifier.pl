#!/usr/bin/perl
# SPDX-FileCopyrightText: The Remate authors
# SPDX-License-Identifier: Apache-2.0

# Checks a record package a second time, in another language and with other libraries, written from the page on the
# package alone: where this program and the first one disagree, one of them or the page is wrong.
#
#   perl second_verifier.pl PACKAGE.zip [--root HEX] [--head HEX ...]
#
# One fault a line, as `rule: sentence`; then GOOD or FAULTS n. Exit status 0 or 1; 2 for wrong use.
# It replays no rules of the trade, and does not compare PDF, CSV and instructions beyond their digests.
# Needs CryptX (Crypt::PK::Ed25519); all else is core Perl. Nothing is ever unpacked to the disk.

use v5.36;
use Compress::Raw::Zlib qw(crc32 Z_OK Z_BUF_ERROR Z_STREAM_END MAX_WBITS);
use Crypt::PK::Ed25519;
use Digest::SHA qw(sha256_hex);
use Encode qw(decode encode);
use MIME::Base64 qw(decode_base64 encode_base64);
use Time::Local qw(timegm_modern);

my $HEX64 = qr/[0-9a-f]{64}/;
my $MAX_SAFE = 9007199254740991;    # 2^53-1, RFC 8785 section 3.2.2.3 and RFC 7493 section 2.2
my $MAX_DEPTH = 100;                # of arrays and objects: no entry is near, and recursion stays small
my $CHUNK = 65536;
# Deflate cannot do better than 1032 to 1 and records do about 10 to 1: beyond this a file is meant to burst us.
my ($MAX_RATIO, $FREE_SIZE) = (250, 1 << 20);
# The order of the base point, RFC 8032 section 5.1: a signature's S has to be below it (section 5.1.7), or the
# same signature has a second spelling. Not every library looks.
my $ORDER = pack 'H*', '1000000000000000000000000000000014def9dea2f79cd65812631a5cf5d3ed';

my $faults = 0;

sub fault($rule, $sentence) {
    # A name out of the package may hold anything; it must not draw a verdict of its own on the screen.
    $sentence =~ s/([^\x20-\x7e])/sprintf '\\x%02x', ord $1/ge;
    say "$rule: $sentence";
    $faults++;
    return;
}

sub verdict() {
    say $faults ? "FAULTS $faults" : 'GOOD';
    exit($faults ? 1 : 0);
}

# ---- Canonical JSON (RFC 8785; grammar of RFC 8259), read from bytes ----------------------------------------------
# Values: strings as { s => bytes }, integers as { i => number }, true, false and null as { w => word }, arrays as
# array references, objects as { o => {...} }. The wrapping keeps "1" and 1 apart, which plain Perl scalars do not.

sub parse_line($line) {
    # RFC 8785 section 3.2.4 asks for UTF-8; utf8::decode refuses overlong forms, but neither surrogates nor what
    # lies beyond U+10FFFF (RFC 3629 section 3).
    my $text = $line;
    die "it is not UTF-8\n" if !utf8::decode($text) || $text =~ /[^\x{0}-\x{d7ff}\x{e000}-\x{10ffff}]/;
    pos($line) = 0;
    my $value = parse_value(\$line, 0);
    die 'something follows the value, at byte ' . pos($line) . "\n" if pos($line) != length $line;
    return $value;
}

sub parse_value($in, $depth) {
    no warnings 'recursion';    # $MAX_DEPTH bounds it
    die "it is nested too deeply\n" if $depth > $MAX_DEPTH;
    return { s => parse_string($in) } if $$in =~ /\G(?=")/gc;
    return { w => $1 } if $$in =~ /\G(true|false|null)/gc;
    if ($$in =~ /\G(-?[0-9]+)/gc) {
        my $digits = $1;
        # One spelling each: no leading zero, no minus zero (RFC 8785 section 3.2.2.3); a fraction or an exponent
        # is left over and refused by whoever comes next.
        die "the number $digits is not written as it has to be\n" if $digits !~ /\A(?:0|-?[1-9][0-9]{0,15})\z/;
        die "the number $digits is beyond 2^53-1\n" if abs($digits) > $MAX_SAFE;
        return { i => 0 + $digits };
    }
    if ($$in =~ /\G\[/gc) {
        my @items;
        return \@items if $$in =~ /\G\]/gc;
        while (1) {
            push @items, parse_value($in, $depth + 1);
            return \@items if $$in =~ /\G\]/gc;
            $$in =~ /\G,/gc or die 'a comma or ] is wanted at byte ' . pos($$in) . "\n";
        }
    }
    if ($$in =~ /\G\{/gc) {
        my (%members, $last);
        return { o => \%members } if $$in =~ /\G\}/gc;
        while (1) {
            my $name = parse_string($in);
            # RFC 8785 section 3.2.3: sorted by UTF-16 code units; strictly, so none stands twice.
            my $order = encode('UTF-16BE', decode('UTF-8', $name));
            die "member \"$name\" is out of order or there twice\n" if defined $last && $order le $last;
            $last = $order;
            $$in =~ /\G:/gc or die 'a colon is wanted at byte ' . pos($$in) . "\n";
            $members{$name} = parse_value($in, $depth + 1);
            return { o => \%members } if $$in =~ /\G\}/gc;
            $$in =~ /\G,/gc or die 'a comma or } is wanted at byte ' . pos($$in) . "\n";
        }
    }
    die 'a value is wanted at byte ' . pos($$in) . "\n";
}

my %ESCAPED = ('"' => '"', '\\' => '\\', b => "\b", t => "\t", n => "\n", f => "\f", r => "\r");

sub parse_string($in) {
    $$in =~ /\G"/gc or die 'a string is wanted at byte ' . pos($$in) . "\n";
    my $string = '';
    while (1) {
        # RFC 8785 section 3.2.2.2: the two-letter escapes where there is one, \u00xx in lower case for the other
        # characters below U+0020, and all else as it is.
        if    ($$in =~ /\G([^"\\\x00-\x1f]++)/gc)                      { $string .= $1 }
        elsif ($$in =~ /\G"/gc)                                        { return $string }
        elsif ($$in =~ /\G\\(["\\btnfr])/gc)                           { $string .= $ESCAPED{$1} }
        elsif ($$in =~ /\G\\u00(0[0-7be-f]|1[0-9a-f])/gc)              { $string .= chr hex $1 }
        else { die 'a string has a character or an escape that it must not have, at byte ' . pos($$in) . "\n" }
    }
}

sub is_string($v)  { return ref $v eq 'HASH' && exists $v->{s} }
sub is_integer($v) { return ref $v eq 'HASH' && exists $v->{i} }
sub is_object($v)  { return ref $v eq 'HASH' && exists $v->{o} }
sub is_null($v)    { return ref $v eq 'HASH' && ($v->{w} // '') eq 'null' }
sub is_digest($v)  { return is_string($v) && $v->{s} =~ /\A$HEX64\z/ }
sub has_members($v, @names) {
    return is_object($v) && join("\0", sort keys $v->{o}->%*) eq join("\0", sort @names);
}
sub body_string($entry, $name) {
    my $value = $entry->{body}{$name};
    return is_string($value) ? $value->{s} : undef;
}

# ---- The ZIP file (PKWARE's APPNOTE, sections 4.3.6 to 4.3.16) ----------------------------------------------------

sub bad_zip($why) { die "package.zip: $why\n" }

sub read_at($fh, $at, $length) {
    my $bytes = '';
    seek $fh, $at, 0 or bad_zip('the file cannot be read');
    read($fh, $bytes, $length) == $length or bad_zip('the file ends too early') if $length;
    return $bytes;
}

# The directory's entries, after proving that local headers and contents fill the file up to it without a gap.
sub read_directory($fh) {
    my $size = -s $fh;
    bad_zip('it is shorter than an end record') if $size < 22;
    # No comment, so the end record is the last 22 bytes and need not be searched for.
    my ($mark, $disk, $start_disk, $here, $count, $length, $start, $comment)
        = unpack 'a4vvvvVVv', read_at($fh, $size - 22, 22);
    bad_zip('the end record is not the last thing in it') if $mark ne "PK\5\6" || $comment;
    bad_zip('it is said to be in several parts') if $disk || $start_disk || $here != $count;
    bad_zip('the directory does not lie right before the end record') if $start + $length != $size - 22;
    my $directory = read_at($fh, $start, $length);
    my ($at, $expected, @files, %seen) = (0, 0);
    for (1 .. $count) {
        bad_zip('the directory ends too early') if $at + 46 > $length;
        my ($sign, $maker, $needed, $flags, $method, $time, $date, $crc, $packed, $plain, $name_length, $extra, $remark,
            $part, $internal, $external, $offset) = unpack 'a4vvvvvvVVVvvvvvVV', substr $directory, $at, 46;
        bad_zip('the directory has something else between its entries') if $sign ne "PK\1\2";
        my $name = substr $directory, $at + 46, $name_length;
        $at += 46 + $name_length + $extra + $remark;
        bad_zip('the directory ends too early') if $at > $length;
        bad_zip("$name is there twice") if $seen{$name}++;
        bad_zip("$name has an extra field or a comment") if $extra || $remark;
        bad_zip("$name is said to be in another part") if $part;
        bad_zip("$name is dated") if $time != 0 || $date != 0x21;      # 1980-01-01 00:00
        bad_zip("$name is neither stored nor deflated") if $method != 0 && $method != 8;
        # Bits 1 and 2 only tell how hard deflate tried; any other would encrypt, move sizes or rename.
        bad_zip("$name has flags that it must not have") if $flags & ($method ? ~6 : ~0);
        bad_zip("$name needs another version than its method does") if $needed != ($method ? 20 : 10);
        # A link or a device would unpack to something other than its contents.
        my $type = ($external >> 16) & 0xf000;
        bad_zip("$name is not a plain file") if $name =~ m{/\z} || $external & 0x10 || ($type && $type != 0x8000);
        bad_zip("$name is stored with two sizes") if !$method && $packed != $plain;
        bad_zip("$name claims to be far larger than it can be") if $plain > $FREE_SIZE && $plain > $MAX_RATIO * $packed;
        bad_zip("$name does not lie right behind what is before it") if $offset != $expected;
        my $local = pack 'a4vvvvvVVVvva*', "PK\3\4", $needed, $flags, $method, $time, $date, $crc, $packed, $plain,
            $name_length, 0, $name;
        bad_zip("$name reaches into the directory") if $offset + length($local) + $packed > $start;
        bad_zip("$name has another local header than the directory says")
            if read_at($fh, $offset, length $local) ne $local;
        $expected = $offset + length($local) + $packed;
        push @files, { name => $name, method => $method, crc => $crc, packed => $packed, size => $plain,
            at => $offset + length $local };
    }
    bad_zip('the directory holds more than its entries') if $at != $length;
    bad_zip('something lies between the files and the directory') if $expected != $start;
    return @files;
}

# Unpacks one file in chunks and keeps what is wanted of it: always digest and first bytes, the text where $keep.
# False when it does not unpack to what its header says.
sub unpack_file($fh, $file, $keep) {
    my $sha = Digest::SHA->new(256);
    my ($crc, $length, $left, $ended) = (0, 0, $file->{packed}, 0);
    @$file{qw(head text)} = ('', $keep ? '' : undef);
    my $inflate = $file->{method}
        && Compress::Raw::Zlib::Inflate->new(-WindowBits => -MAX_WBITS, -LimitOutput => 1, -Bufsize => $CHUNK);
    my $take = sub ($bytes) {
        $length += length $bytes;
        return 0 if $length > $file->{size};        # stop at the first byte too many
        $crc = crc32($bytes, $crc);
        $sha->add($bytes);
        $file->{head} .= substr $bytes, 0, 8 - length $file->{head} if length $file->{head} < 8;
        $file->{text} .= $bytes if $keep;
        return 1;
    };
    while ($left) {
        return 0 if $ended;                         # bytes behind the end of the deflated data
        my $part = read_at($fh, $file->{at} + $file->{packed} - $left, $left < $CHUNK ? $left : $CHUNK);
        $left -= length $part;
        if (!$inflate) { $take->($part) or return 0; next }
        my $status;
        do {
            my $out = '';
            $status = $inflate->inflate($part, $out);
            return 0 if $status != Z_OK && $status != Z_BUF_ERROR && $status != Z_STREAM_END;
            $take->($out) or return 0;
            $part = '' if $status == Z_BUF_ERROR && $out eq '';     # it wants more input
        } while ($part ne '' && $status != Z_STREAM_END);
        $ended = $status == Z_STREAM_END;
        return 0 if $ended && $part ne '';
    }
    # With the output limited, the last chunk may still be inside the library when all input is taken.
    while ($inflate && !$ended) {
        my ($nothing, $out) = ('', '');
        my $status = $inflate->inflate($nothing, $out);
        return 0 if $status != Z_STREAM_END && $out eq '';
        $take->($out) or return 0;
        $ended = $status == Z_STREAM_END;
    }
    $file->{sha256} = $sha->hexdigest;
    return $length == $file->{size} && $crc == $file->{crc};
}

# ---- The bag (RFC 8493) -------------------------------------------------------------------------------------------

# The file's lines, or none and a fault; every line ends with LF, the last one too.
sub lines_of($text, $rule, $what) {
    if ($text ne '' && $text !~ /\n\z/) { fault($rule, "The last line of $what does not end."); return }
    my @lines = split /\n/, $text, -1;
    pop @lines;     # what is behind the last LF: nothing
    return @lines;
}

# RFC 8493 sections 2.1.3 and 2.2.1: checks one manifest against the files that it has to list, and no others.
sub check_manifest($files, $manifest, @should) {
    my $file = $files->{$manifest};
    return if !$file || $file->{broken};
    my (%listed, $last);
    for my $line (lines_of($file->{text}, 'package.bag', $manifest)) {
        if ($line !~ /\A($HEX64)  ([^\r]+)\z/) { fault('package.bag', "$manifest has a line of another form: $line"); next }
        my ($digest, $path) = ($1, $2);
        fault('package.bag', "$manifest is not sorted at $path.") if defined $last && $path le $last;
        $last = $path;
        $listed{$path} = $digest;
        if (!$files->{$path}) { fault('package.missing', "$path is listed in $manifest and is not there.") }
        elsif ($files->{$path}{broken}) { }         # told already
        elsif ($files->{$path}{sha256} ne $digest) { fault('package.digest', "$path is not what $manifest says.") }
    }
    for my $path (@should) { fault('package.extra', "$path is not listed in $manifest.") if !$listed{$path} && $files->{$path} }
    my %should = map { $_ => 1 } @should;
    for my $path (sort keys %listed) {
        fault('package.bag', "$manifest lists $path, which is not its to list.") if $files->{$path} && !$should{$path};
    }
    return;
}

# ---- Ledgers ------------------------------------------------------------------------------------------------------

my @ENTRY = qw(at author body key kind ledger meaning prev register seq subject v);

# Whether it is {"hash","seq"} and the further members, as a pin has to be.
sub is_pin($v, @more) {
    return has_members($v, qw(hash seq), @more) && is_digest($v->{o}{hash}) && is_integer($v->{o}{seq})
        && $v->{o}{seq}{i} >= 1;
}

sub is_moment($text) {
    return 0 if $text !~ /\A([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})\.[0-9]{3}Z\z/a;
    return defined eval { timegm_modern($6, $5, $4, $3, $2 - 1, $1) };
}

# What an entry's value says, in plain scalars, or dies with what is wrong with its form.
sub entry_of($value, $in_register) {
    my $linked = is_object($value) && exists $value->{o}{linked};
    has_members($value, @ENTRY, $linked ? 'linked' : ()) or die "it has not the members that an entry has\n";
    my $o = $value->{o};
    is_integer($o->{v}) && $o->{v}{i} == 1 or die "v is not 1\n";
    is_integer($o->{seq}) or die "seq is no number\n";
    for (qw(at author key kind ledger meaning prev)) { is_string($o->{$_}) or die "$_ is no string\n" }
    is_moment($o->{at}{s}) or die "at is no moment\n";
    for (qw(key prev)) { is_digest($o->{$_}) or die "$_ is no digest\n" }
    is_string($o->{subject}) || is_null($o->{subject}) or die "subject is neither a string nor null\n";
    is_object($o->{body}) or die "body is no object\n";
    my %entry = (seq => $o->{seq}{i}, body => $o->{body}{o}, subject => $o->{subject}{s}, links => {});
    $entry{$_} = $o->{$_}{s} for qw(at author key kind ledger prev);
    if ($in_register) { is_null($o->{register}) && !$linked or die "an entry of the register pins nothing\n"; return \%entry }
    is_pin($o->{register}) or die "register is no pin\n";
    @entry{qw(pin_seq pin_hash)} = ($o->{register}{o}{seq}{i}, $o->{register}{o}{hash}{s});
    return \%entry if !$linked;
    my $last;
    ref $o->{linked} eq 'ARRAY' && $o->{linked}->@* or die "linked is no array with something in it\n";
    for my $pin ($o->{linked}->@*) {
        is_pin($pin, 'ledger') && is_string($pin->{o}{ledger}) or die "linked holds something that is no pin\n";
        my $name = $pin->{o}{ledger}{s};
        my $order = encode('UTF-16BE', decode('UTF-8', $name));
        die "linked is not sorted, or names a ledger twice\n" if defined $last && $order le $last;
        $last = $order;
        $entry{links}{$name} = { seq => $pin->{o}{seq}{i}, hash => $pin->{o}{hash}{s} };
    }
    return \%entry;
}

# Every value of a member `sha256`, however deep in the body.
sub attachments_in($value) {
    return map { attachments_in($_) } @$value if ref $value eq 'ARRAY';
    return () if !is_object($value);
    return map { $_ eq 'sha256' && is_string($value->{o}{$_}) ? $value->{o}{$_}{s} : attachments_in($value->{o}{$_}) }
        sort keys $value->{o}->%*;
}

sub signature_holds($key, $signature, $message) {
    return 0 if length $signature != 64 || reverse(substr $signature, 32) ge $ORDER;
    my $ok = eval { Crypt::PK::Ed25519->new->import_key_raw($key, 'public')->verify_message($signature, $message) };
    return $ok ? 1 : 0;
}

# The key that a person had after entry n of the register; undef if none.
sub key_after($keys, $person, $n) {
    my ($key) = grep { $_->{from} <= $n } reverse +($keys->{$person} // [])->@*;
    return $key && $key->{key};
}

# Reads one ledger of the bag and checks all that it says of itself. $keys: whose key is which; the register, which is
# read first, fills it. The text is let go of on the way: what stays is a small hash for each entry.
sub read_ledger($files, $stem, $keys, $in_register) {
    my %ledger = (stem => $stem, entries => [], digests => {}, name => undef, unread => 1);
    my ($entries, $signatures) = map { $files->{"$stem.$_.jsonl"} } qw(entries signatures);
    return \%ledger if !$entries || !$signatures || $entries->{broken} || $signatures->{broken};
    $ledger{unread} = 0;
    my @lines = lines_of(delete $entries->{text}, 'package.lines', "$stem.entries.jsonl");
    my @seals = lines_of(delete $signatures->{text}, 'package.lines', "$stem.signatures.jsonl");
    fault('package.lines', "$stem has ${\scalar @lines} entries and ${\scalar @seals} signatures.") if @lines != @seals;
    fault('ledger.form', "$stem has no entry.") if !@lines;
    my ($before, $clock, $pinned, $n, %linked) = ('0' x 64, '', 0, 0);
    for my $line (@lines) {
        $n++;
        my $where = "Line $n of $stem";
        my $digest = sha256_hex($line);
        my $entry = eval { entry_of(parse_line($line), $in_register) };
        if (!$entry) { fault('ledger.form', "$where: " . $@ =~ s/\n\z/./r); $entry = { links => {} }; $ledger{unread}++ }
        $entry->{digest} = $digest;
        push $ledger{entries}->@*, $entry;
        $ledger{digests}{$digest} = $n;
        my $prev = $before;
        $before = $digest;
        my $seal = eval { parse_line($seals[$n - 1] // die "there is none\n") };
        my $seal_fault = $@ =~ s/\n\z//r;
        if (!$seal || !has_members($seal, qw(hash seq signature)) || !is_string($seal->{o}{hash})
            || !is_integer($seal->{o}{seq}) || !is_string($seal->{o}{signature})) {
            fault('package.lines', "$where has no signature line of the right form beside it ($seal_fault).") if $n <= @seals;
            $seal = undef;
        } else {
            fault('package.lines', "$where has the signature of another number beside it.") if $seal->{o}{seq}{i} != $n;
            fault('ledger.hash', "$where is not what its digest says.") if $seal->{o}{hash}{s} ne $digest;
        }
        next if !exists $entry->{seq};

        $ledger{name} //= $entry->{ledger};
        fault('ledger.form', "$where is of another ledger.") if $entry->{ledger} ne $ledger{name};
        fault('ledger.sequence', "$where has the number $entry->{seq}.") if $entry->{seq} != $n;
        fault('ledger.chain', "$where does not follow the entry before.") if $entry->{prev} ne $prev;
        # The form is fixed and in UTC, so text order is time order.
        fault('ledger.clock', "$where is earlier than the entry before.") if $entry->{at} lt $clock;
        $clock = $entry->{at};
        if (!$in_register) {
            fault('ledger.pin', "$where pins an earlier register entry than one before it did.") if $entry->{pin_seq} < $pinned;
            $pinned = $entry->{pin_seq};
            for my $name (sort keys $entry->{links}->%*) {
                my $seq = $entry->{links}{$name}{seq};
                fault('ledger.linked-pin', "$where pins an earlier entry of $name than one before it did.")
                    if $seq < ($linked{$name} // 0);
                $linked{$name} = $seq;
            }
        }
        $entry->{sha256} = [attachments_in({ o => $entry->{body} })];
        learn_key($keys, $entry, $n, $where) if $in_register;

        # Founding signs itself; after that the register's own entries are signed with the key from before them.
        my $from = !$in_register ? $entry->{pin_seq} : $n == 1 ? 1 : $n - 1;
        my $key = key_after($keys, $entry->{author}, $from);
        if (!defined $key) { fault('ledger.key', "$where: $entry->{author} had no key.") }
        else {
            fault('ledger.key', "$where: key is not that of $entry->{author}.") if $entry->{key} ne sha256_hex($key);
            my $text = $seal ? $seal->{o}{signature}{s} : undef;
            my $raw = defined $text ? decode_base64($text) : '';
            # RFC 4648 section 3.5: the unused bits are zero, or one signature has sixteen spellings.
            fault('ledger.signature', "$where is not signed by $entry->{author}.")
                if defined $text && (encode_base64($raw, '') ne $text || !signature_holds($key, $raw, $line));
        }
        # Only the labels ask for bodies, and only for those of the first entries.
        delete $entry->{body} if $n > 1;
    }
    return \%ledger;
}

sub learn_key($keys, $entry, $n, $where) {
    my $kind = $entry->{kind};
    if (($kind eq 'register.founded') != ($n == 1)) {
        fault('register.root', "$where: the register is founded by its first entry, and by no other.");
    }
    return if $kind !~ /\A(?:register\.founded|person\.enrolled|key\.replaced)\z/;
    my $hex = body_string($entry, 'public_key') // '';
    my $whose = $kind eq 'register.founded' ? $entry->{author} : $entry->{subject};
    if ($hex !~ /\A$HEX64\z/ || !defined $whose) { fault('ledger.form', "$where carries no key, or nobody's."); return }
    push $keys->{$whose}->@*, { from => $n, key => pack 'H*', $hex };
    return;
}

# Pins between ledgers: what is pinned has to be there, and each ledger goes as far as it is pinned and no further.
sub check_pins($job, $register, $linked) {
    my %by_name = (%$linked, defined $job->{name} ? ($job->{name} => $job) : ());
    for my $ledger ($job, map { $linked->{$_} } sort keys %$linked) {
        my $n = 0;
        for my $entry ($ledger->{entries}->@*) {
            my $where = 'Line ' . ++$n . " of $ledger->{stem}";
            next if !exists $entry->{pin_seq};
            my $pinned = $register->{entries}[$entry->{pin_seq} - 1];
            fault('ledger.pin', "$where pins a register entry that is not in the register.")
                if !$pinned || $pinned->{digest} ne $entry->{pin_hash};
            fault('ledger.clock', "$where is earlier than the register entry that it pins.") if $pinned && $entry->{at} lt $pinned->{at};
            my $unseen = $register->{entries}[$entry->{pin_seq}];
            fault('ledger.unseen', "$where is later than a register entry that it does not pin.") if $unseen && $entry->{at} gt $unseen->{at};
            for my $name (sort keys $entry->{links}->%*) {
                my $pin = $entry->{links}{$name};
                my $target = $by_name{$name} && $by_name{$name}{entries}[$pin->{seq} - 1];
                fault('ledger.linked-pin', "$where pins an entry of $name that is not there.")
                    if !$target || $target->{digest} ne $pin->{hash};
            }
        }
    }
    # What an unreadable entry pins cannot be told, so neither can how far the others should go; that fault stands already.
    return if grep { $_->{unread} } $job, $register, values %$linked;
    # Jobs may pin each other, so from the job's own end outwards until nothing grows.
    my (%reach, %done);
    my $register_reach = 0;
    my @todo = ([$job, scalar $job->{entries}->@*]);
    while (my $next = shift @todo) {
        my ($ledger, $upto) = @$next;
        my $at = $done{ $ledger->{stem} } // 0;
        for my $entry (grep { defined } ($ledger->{entries}->@*)[$at .. $upto - 1]) {
            $register_reach = $entry->{pin_seq} if ($entry->{pin_seq} // 0) > $register_reach;
            for my $name (keys $entry->{links}->%*) {
                my $seq = $entry->{links}{$name}{seq};
                next if !$linked->{$name} || $seq <= ($reach{$name} // 0);
                $reach{$name} = $seq;
                my $there = $linked->{$name}{entries}->@*;
                push @todo, [$linked->{$name}, $seq < $there ? $seq : $there];
            }
        }
        $done{ $ledger->{stem} } = $upto if $upto > $at;
    }
    for ([$register, $register_reach], map { [$linked->{$_}, $reach{$_} // 0] } sort keys %$linked) {
        my ($ledger, $end, $there) = (@$_, scalar $_->[0]{entries}->@*);
        fault('package.reach', "$ledger->{stem} goes to $there and is pinned to $end.") if $there != $end;
    }
    return;
}

sub check_attachments($files, @ledgers) {
    my %named = map { $_ => 1 } map { ($_->{sha256} // [])->@* } map { $_->{entries}->@* } @ledgers;
    my %there;
    for my $path (grep { m{\Adata/attachments/} } sort keys %$files) {
        my ($name, $ending) = $path =~ m{\Adata/attachments/($HEX64)\.(jpg|png|pdf|bin)\z} or next;    # told as extra
        $there{$name} = 1;
        fault('package.extra', "No entry names $path.") if !$named{$name};
        next if $files->{$path}{broken};
        my $head = $files->{$path}{head};
        my $is = $head =~ /\A\xff\xd8\xff/ ? 'jpg' : $head =~ /\A\x89PNG\r\n\x1a\n/ ? 'png' : $head =~ /\A%PDF-/ ? 'pdf' : 'bin';
        fault('attachment.digest', "$path is not what its name says.") if $files->{$path}{sha256} ne $name || $is ne $ending;
    }
    for (sort keys %named) { fault('attachment.missing', "The attachment $_ is named and is not there.") if !$there{$_} }
    return;
}

# Labels: RFC 8493 section 2.2.2. undef: not told by the entries; then a pattern is all that can be asked.
sub check_labels($files, $job, $register) {
    my $file = $files->{'bag-info.txt'};
    return if !$file || $file->{broken};
    my ($first, $last, $root) = ($job->{entries}[0], $job->{entries}[-1], $register->{entries}[0]);
    return if grep { !exists $_->{seq} } $first, $last, $root;      # told already; the labels cannot be
    my @payload = grep { m{\Adata/} } keys %$files;
    my $bytes = 0;
    $bytes += $files->{$_}{size} for @payload;
    my @labels = (
        ['Source-Organization', body_string($root, 'organisation')], ['External-Identifier', body_string($first, 'work_order')],
        ['External-Description', body_string($first, 'title')], ['Bagging-Date', substr $last->{at} // '', 0, 10],
        ['Payload-Oxum', "$bytes." . @payload], ['Remate-Format', 1], ['Remate-Version', undef, qr/.+/],
        ['Remate-Rules', undef, qr/[1-9][0-9]*/], ['Remate-Typeset', undef, qr/.+/], ['Remate-Paper', undef, qr/a4|letter/],
        ['Remate-Ledger', $job->{name}], ['Remate-Head', scalar($job->{entries}->@*) . ' ' . ($last->{digest} // '')],
        ['Remate-Root', $root->{digest}], ['Remate-Closed', ($last->{kind} // '') eq 'job.closed' ? 'yes' : 'no']);
    my @lines = lines_of($file->{text}, 'package.bag', 'bag-info.txt');
    fault('package.bag', 'bag-info.txt has not one line for each label.') if @lines != @labels;
    for my $label (@labels) {
        my ($name, $value, $pattern) = @$label;
        my $line = shift @lines // last;
        if ($line !~ /\A\Q$name\E: (.*)\z/s) { fault('package.bag', "bag-info.txt has \"$line\" where $name belongs."); next }
        fault('package.labels', "$name says \"$1\", the entries \"" . ($value // 'nothing of it') . '".')
            if $pattern ? $1 !~ /\A(?:$pattern)\z/ : $1 ne ($value // "\n");
    }
    return;
}

# ---- The whole ----------------------------------------------------------------------------------------------------

my @TAGS = qw(bagit.txt bag-info.txt manifest-sha256.txt);
my @FIXED = (@TAGS, 'tagmanifest-sha256.txt', map { "data/$_" } qw(job.entries.jsonl job.signatures.jsonl
    register.entries.jsonl register.signatures.jsonl record.pdf interfaces.csv VERIFY.txt verify.py));

sub main(@arguments) {
    my ($package, $root, @heads);
    while (defined(my $word = shift @arguments)) {
        if ($word eq '--root' || $word eq '--head') {
            my $digest = lc(shift @arguments // '');
            if ($digest !~ /\A$HEX64\z/) { say STDERR "$word wants 64 hex digits."; exit 2 }
            if ($word eq '--root') { $root = $digest } else { push @heads, $digest }
        } elsif (!defined $package && $word !~ /\A--/) { $package = $word }
        else { undef $package; last }
    }
    if (!defined $package) { say STDERR 'Use: perl second_verifier.pl PACKAGE.zip [--root HEX] [--head HEX ...]'; exit 2 }
    my $fh;
    if (!open $fh, '<:raw', $package) { say STDERR "$package cannot be read: $!"; exit 2 }

    my ($folder, %files);
    my $read = eval {
        for my $file (read_directory($fh)) {
            my ($top, $path) = $file->{name} =~ m{\A([^/]+)/(.+)\z}s or bad_zip("$file->{name} is in no folder");
            $folder //= $top;
            bad_zip('it holds more than one folder') if $top ne $folder;
            $files{$path} = $file;
            my $keep = $path =~ /\.jsonl\z/ || grep { $_ eq $path } @FIXED[0 .. 3];
            $file->{broken} = !unpack_file($fh, $file, $keep);
            fault('package.digest', "$path does not unpack to what its header says.") if $file->{broken};
        }
        1;
    };
    if (!$read) { my ($rule, $why) = $@ =~ /\A([a-z.]+): (.*)\n\z/s or die $@; fault($rule, "$why."); verdict() }

    my %ledger_files;
    for my $path (sort keys %files) {
        next if grep { $_ eq $path } @FIXED;
        if ($path =~ m{\Adata/linked/([^/]+)\.(entries|signatures)\.jsonl\z}) { $ledger_files{$1}{$2} = 1 }
        elsif ($path !~ m{\Adata/attachments/$HEX64\.(?:jpg|png|pdf|bin)\z}) { fault('package.extra', "$path does not belong.") }
    }
    my @wanted = (@FIXED, map { ("data/linked/$_.entries.jsonl", "data/linked/$_.signatures.jsonl") } sort keys %ledger_files);
    for (@wanted) { fault('package.missing', "$_ is missing.") if !$files{$_} }

    my $bagit = $files{'bagit.txt'};
    if ($bagit && !$bagit->{broken}) {    # RFC 8493 section 2.1.1
        fault('package.bag', 'bagit.txt says something else than it has to.')
            if $bagit->{text} ne "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
    }
    check_manifest(\%files, 'manifest-sha256.txt', grep { m{\Adata/} } sort keys %files);
    check_manifest(\%files, 'tagmanifest-sha256.txt', @TAGS);

    my %keys;
    my $register = read_ledger(\%files, 'data/register', \%keys, 1);
    my $job = read_ledger(\%files, 'data/job', \%keys, 0);
    my %linked;
    for my $name (sort keys %ledger_files) {
        $linked{$name} = read_ledger(\%files, "data/linked/$name", \%keys, 0);
        fault('package.extra', "data/linked/$name is the job's own ledger.") if $name eq ($job->{name} // '');
        fault('ledger.form', "data/linked/$name holds another ledger.") if ($linked{$name}{name} // $name) ne $name;
    }
    fault('package.bag', "The folder $folder is not named after the job's ledger.")
        if defined $job->{name} && $folder ne "remate-$job->{name}";
    check_pins($job, $register, \%linked);
    my @ledgers = ($job, $register, map { $linked{$_} } sort keys %linked);
    check_attachments(\%files, @ledgers);
    check_labels(\%files, $job, $register) if $job->{entries}->@* && $register->{entries}->@*;

    my $founded = $register->{entries}[0];
    fault('register.root', 'The root is not the one that was given.') if defined $root && ($founded->{digest} // '') ne $root;
    for my $head (@heads) {
        fault('ledger.missing', "The entry $head is not there.") if !grep { $_->{digests}{$head} } @ledgers;
    }
    verdict();
}

main(@ARGV);
