"""System calls of Linux that a reader never needs, with their numbers on x86-64 and on aarch64.

Source: the kernel's own tables, `arch/x86/entry/syscalls/syscall_64.tbl` and
`include/uapi/asm-generic/unistd.h`; a test compares them with the headers where those are
installed. 0 stands for a call that aarch64 does not have.
"""

from __future__ import annotations

ARCHES = {"x86_64": 0xC000003E, "aarch64": 0xC00000B7}
"""AUDIT_ARCH_X86_64 and AUDIT_ARCH_AARCH64 of `linux/audit.h`."""

FROM_HERE_NEW = 424
"""Calls from this number on bear the same number everywhere; libraries do without them."""
NEW_ALLOWED = {"close_range": 436, "faccessat2": 439, "epoll_pwait2": 441, "futex_waitv": 449}

# Looked at with their arguments.
ASKED = {
    "open": (2, 0), "openat": (257, 56), "clone": (56, 220), "tgkill": (234, 131),
    "prlimit64": (302, 261),
}  # fmt: skip

DENIED = {
    # other machines and other processes
    "socket": (41, 198), "connect": (42, 203), "accept": (43, 202), "sendto": (44, 206),
    "sendmsg": (46, 211), "bind": (49, 200), "listen": (50, 201), "socketpair": (53, 199),
    "accept4": (288, 242), "sendmmsg": (307, 269), "recvmmsg": (299, 243),
    "shmget": (29, 194), "shmat": (30, 196), "msgget": (68, 186), "msgsnd": (69, 189),
    "semget": (64, 190), "semop": (65, 193), "mq_open": (240, 180), "mq_unlink": (241, 181),
    "kill": (62, 129), "tkill": (200, 130), "rt_sigqueueinfo": (129, 138),
    "rt_tgsigqueueinfo": (297, 240), "ptrace": (101, 117), "kcmp": (312, 272),
    "process_vm_readv": (310, 270), "process_vm_writev": (311, 271),
    # new programs and processes
    "fork": (57, 0), "vfork": (58, 0), "execve": (59, 221), "execveat": (322, 281),
    # files made, changed, removed, or opened without a name
    "creat": (85, 0), "truncate": (76, 45), "ftruncate": (77, 46), "fallocate": (285, 47),
    "rename": (82, 0), "renameat": (264, 38), "renameat2": (316, 276),
    "mkdir": (83, 0), "mkdirat": (258, 34), "rmdir": (84, 0),
    "link": (86, 0), "linkat": (265, 37), "symlink": (88, 0), "symlinkat": (266, 36),
    "unlink": (87, 0), "unlinkat": (263, 35), "mknod": (133, 0), "mknodat": (259, 33),
    "chmod": (90, 0), "fchmod": (91, 52), "fchmodat": (268, 53),
    "chown": (92, 0), "fchown": (93, 55), "lchown": (94, 0), "fchownat": (260, 54),
    "utime": (132, 0), "utimes": (235, 0), "futimesat": (261, 0), "utimensat": (280, 88),
    "setxattr": (188, 5), "lsetxattr": (189, 6), "fsetxattr": (190, 7),
    "removexattr": (197, 14), "lremovexattr": (198, 15), "fremovexattr": (199, 16),
    "name_to_handle_at": (303, 264), "open_by_handle_at": (304, 265), "memfd_create": (319, 279),
    "inotify_init": (253, 0), "inotify_init1": (294, 26),
    "fanotify_init": (300, 262), "fanotify_mark": (301, 263),
    # the system itself
    "mount": (165, 40), "umount2": (166, 39), "pivot_root": (155, 41), "chroot": (161, 51),
    "unshare": (272, 97), "setns": (308, 268), "swapon": (167, 224), "swapoff": (168, 225),
    "reboot": (169, 142), "kexec_load": (246, 104), "kexec_file_load": (320, 294),
    "init_module": (175, 105), "finit_module": (313, 273), "delete_module": (176, 106),
    "acct": (163, 89), "quotactl": (179, 60), "syslog": (103, 116),
    "sethostname": (170, 161), "setdomainname": (171, 162), "settimeofday": (164, 170),
    "clock_settime": (227, 112), "adjtimex": (159, 171), "clock_adjtime": (305, 266),
    "iopl": (172, 0), "ioperm": (173, 0), "modify_ldt": (154, 0), "uselib": (134, 0),
    "personality": (135, 92), "bpf": (321, 280), "perf_event_open": (298, 241),
    "userfaultfd": (323, 282), "lookup_dcookie": (212, 18), "vhangup": (153, 58),
    "io_submit": (209, 2),
    # keys, names and powers
    "add_key": (248, 217), "request_key": (249, 218), "keyctl": (250, 219),
    "setuid": (105, 146), "setgid": (106, 144), "setreuid": (113, 145), "setregid": (114, 143),
    "setgroups": (116, 159), "setresuid": (117, 147), "setresgid": (119, 149),
    "setfsuid": (122, 151), "setfsgid": (123, 152), "capset": (126, 91),
    "setrlimit": (160, 164), "setpriority": (141, 140),
    "migrate_pages": (256, 238), "move_pages": (279, 239),
}  # fmt: skip
