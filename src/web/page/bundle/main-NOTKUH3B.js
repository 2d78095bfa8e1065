import{A as Ku,B as Qu,C as tt,D as dt,E as Gu,F as Yu,G as ee,H as Pe,I as Io,J as fe,K as Or,L as Zu,M as Xu,O as td,P as ed,Q as nd,a as Fu,b as Cu,c as K,d as v,e as Lu,f as Eu,g as Bo,h as Wn,i as vt,j as In,k as Bu,l as Mr,m as Wu,n as Wo,o as Iu,p as Hu,q as Ji,r as ju,s as Nu,t as qu,u as He,v as Uu,w as zu,x as Ju,y as je,z as Vu}from"./chunk-LWCAZ25T.js";var Vi=globalThis,Qi=Vi.ShadowRoot&&(Vi.ShadyCSS===void 0||Vi.ShadyCSS.nativeShadow)&&"adoptedStyleSheets"in Document.prototype&&"replace"in CSSStyleSheet.prototype,id=Symbol(),od=new WeakMap,Ki=class{constructor(e,n,o){if(this._$cssResult$=!0,o!==id)throw Error("CSSResult is not constructable. Use `unsafeCSS` or `css` instead.");this.cssText=e,this.t=n}get styleSheet(){let e=this.o,n=this.t;if(Qi&&e===void 0){let o=n!==void 0&&n.length===1;o&&(e=od.get(n)),e===void 0&&((this.o=e=new CSSStyleSheet).replaceSync(this.cssText),o&&od.set(n,e))}return e}toString(){return this.cssText}},sd=t=>new Ki(typeof t=="string"?t:t+"",void 0,id);var rd=(t,e)=>{if(Qi)t.adoptedStyleSheets=e.map(n=>n instanceof CSSStyleSheet?n:n.styleSheet);else for(let n of e){let o=document.createElement("style"),i=Vi.litNonce;i!==void 0&&o.setAttribute("nonce",i),o.textContent=n.cssText,t.appendChild(o)}},Fr=Qi?t=>t:t=>t instanceof CSSStyleSheet?(e=>{let n="";for(let o of e.cssRules)n+=o.cssText;return sd(n)})(t):t;var{is:o_,defineProperty:i_,getOwnPropertyDescriptor:s_,getOwnPropertyNames:r_,getOwnPropertySymbols:a_,getPrototypeOf:l_}=Object,Gi=globalThis,ad=Gi.trustedTypes,u_=ad?ad.emptyScript:"",d_=Gi.reactiveElementPolyfillSupport,Ho=(t,e)=>t,Cr={toAttribute(t,e){switch(e){case Boolean:t=t?u_:null;break;case Object:case Array:t=t==null?t:JSON.stringify(t)}return t},fromAttribute(t,e){let n=t;switch(e){case Boolean:n=t!==null;break;case Number:n=t===null?null:Number(t);break;case Object:case Array:try{n=JSON.parse(t)}catch{n=null}}return n}},ud=(t,e)=>!o_(t,e),ld={attribute:!0,type:String,converter:Cr,reflect:!1,useDefault:!1,hasChanged:ud};Symbol.metadata??=Symbol("metadata"),Gi.litPropertyMetadata??=new WeakMap;var De=class extends HTMLElement{static addInitializer(e){this._$Ei(),(this.l??=[]).push(e)}static get observedAttributes(){return this.finalize(),this._$Eh&&[...this._$Eh.keys()]}static createProperty(e,n=ld){if(n.state&&(n.attribute=!1),this._$Ei(),this.prototype.hasOwnProperty(e)&&((n=Object.create(n)).wrapped=!0),this.elementProperties.set(e,n),!n.noAccessor){let o=Symbol(),i=this.getPropertyDescriptor(e,o,n);i!==void 0&&i_(this.prototype,e,i)}}static getPropertyDescriptor(e,n,o){let{get:i,set:s}=s_(this.prototype,e)??{get(){return this[n]},set(a){this[n]=a}};return{get:i,set(a){let d=i?.call(this);s?.call(this,a),this.requestUpdate(e,d,o)},configurable:!0,enumerable:!0}}static getPropertyOptions(e){return this.elementProperties.get(e)??ld}static _$Ei(){if(this.hasOwnProperty(Ho("elementProperties")))return;let e=l_(this);e.finalize(),e.l!==void 0&&(this.l=[...e.l]),this.elementProperties=new Map(e.elementProperties)}static finalize(){if(this.hasOwnProperty(Ho("finalized")))return;if(this.finalized=!0,this._$Ei(),this.hasOwnProperty(Ho("properties"))){let n=this.properties,o=[...r_(n),...a_(n)];for(let i of o)this.createProperty(i,n[i])}let e=this[Symbol.metadata];if(e!==null){let n=litPropertyMetadata.get(e);if(n!==void 0)for(let[o,i]of n)this.elementProperties.set(o,i)}this._$Eh=new Map;for(let[n,o]of this.elementProperties){let i=this._$Eu(n,o);i!==void 0&&this._$Eh.set(i,n)}this.elementStyles=this.finalizeStyles(this.styles)}static finalizeStyles(e){let n=[];if(Array.isArray(e)){let o=new Set(e.flat(1/0).reverse());for(let i of o)n.unshift(Fr(i))}else e!==void 0&&n.push(Fr(e));return n}static _$Eu(e,n){let o=n.attribute;return o===!1?void 0:typeof o=="string"?o:typeof e=="string"?e.toLowerCase():void 0}constructor(){super(),this._$Ep=void 0,this.isUpdatePending=!1,this.hasUpdated=!1,this._$Em=null,this._$Ev()}_$Ev(){this._$ES=new Promise(e=>this.enableUpdating=e),this._$AL=new Map,this._$E_(),this.requestUpdate(),this.constructor.l?.forEach(e=>e(this))}addController(e){(this._$EO??=new Set).add(e),this.renderRoot!==void 0&&this.isConnected&&e.hostConnected?.()}removeController(e){this._$EO?.delete(e)}_$E_(){let e=new Map,n=this.constructor.elementProperties;for(let o of n.keys())this.hasOwnProperty(o)&&(e.set(o,this[o]),delete this[o]);e.size>0&&(this._$Ep=e)}createRenderRoot(){let e=this.shadowRoot??this.attachShadow(this.constructor.shadowRootOptions);return rd(e,this.constructor.elementStyles),e}connectedCallback(){this.renderRoot??=this.createRenderRoot(),this.enableUpdating(!0),this._$EO?.forEach(e=>e.hostConnected?.())}enableUpdating(e){}disconnectedCallback(){this._$EO?.forEach(e=>e.hostDisconnected?.())}attributeChangedCallback(e,n,o){this._$AK(e,o)}_$ET(e,n){let o=this.constructor.elementProperties.get(e),i=this.constructor._$Eu(e,o);if(i!==void 0&&o.reflect===!0){let s=(o.converter?.toAttribute!==void 0?o.converter:Cr).toAttribute(n,o.type);this._$Em=e,s==null?this.removeAttribute(i):this.setAttribute(i,s),this._$Em=null}}_$AK(e,n){let o=this.constructor,i=o._$Eh.get(e);if(i!==void 0&&this._$Em!==i){let s=o.getPropertyOptions(i),a=typeof s.converter=="function"?{fromAttribute:s.converter}:s.converter?.fromAttribute!==void 0?s.converter:Cr;this._$Em=i;let d=a.fromAttribute(n,s.type);this[i]=d??this._$Ej?.get(i)??d,this._$Em=null}}requestUpdate(e,n,o,i=!1,s){if(e!==void 0){let a=this.constructor;if(i===!1&&(s=this[e]),o??=a.getPropertyOptions(e),!((o.hasChanged??ud)(s,n)||o.useDefault&&o.reflect&&s===this._$Ej?.get(e)&&!this.hasAttribute(a._$Eu(e,o))))return;this.C(e,n,o)}this.isUpdatePending===!1&&(this._$ES=this._$EP())}C(e,n,{useDefault:o,reflect:i,wrapped:s},a){o&&!(this._$Ej??=new Map).has(e)&&(this._$Ej.set(e,a??n??this[e]),s!==!0||a!==void 0)||(this._$AL.has(e)||(this.hasUpdated||o||(n=void 0),this._$AL.set(e,n)),i===!0&&this._$Em!==e&&(this._$Eq??=new Set).add(e))}async _$EP(){this.isUpdatePending=!0;try{await this._$ES}catch(n){Promise.reject(n)}let e=this.scheduleUpdate();return e!=null&&await e,!this.isUpdatePending}scheduleUpdate(){return this.performUpdate()}performUpdate(){if(!this.isUpdatePending)return;if(!this.hasUpdated){if(this.renderRoot??=this.createRenderRoot(),this._$Ep){for(let[i,s]of this._$Ep)this[i]=s;this._$Ep=void 0}let o=this.constructor.elementProperties;if(o.size>0)for(let[i,s]of o){let{wrapped:a}=s,d=this[i];a!==!0||this._$AL.has(i)||d===void 0||this.C(i,void 0,s,d)}}let e=!1,n=this._$AL;try{e=this.shouldUpdate(n),e?(this.willUpdate(n),this._$EO?.forEach(o=>o.hostUpdate?.()),this.update(n)):this._$EM()}catch(o){throw e=!1,this._$EM(),o}e&&this._$AE(n)}willUpdate(e){}_$AE(e){this._$EO?.forEach(n=>n.hostUpdated?.()),this.hasUpdated||(this.hasUpdated=!0,this.firstUpdated(e)),this.updated(e)}_$EM(){this._$AL=new Map,this.isUpdatePending=!1}get updateComplete(){return this.getUpdateComplete()}getUpdateComplete(){return this._$ES}shouldUpdate(e){return!0}update(e){this._$Eq&&=this._$Eq.forEach(n=>this._$ET(n,this[n])),this._$EM()}updated(e){}firstUpdated(e){}};De.elementStyles=[],De.shadowRootOptions={mode:"open"},De[Ho("elementProperties")]=new Map,De[Ho("finalized")]=new Map,d_?.({ReactiveElement:De}),(Gi.reactiveElementVersions??=[]).push("2.1.2");var Er=globalThis,dd=t=>t,Yi=Er.trustedTypes,cd=Yi?Yi.createPolicy("lit-html",{createHTML:t=>t}):void 0,Br="$lit$",Me=`lit$${Math.random().toFixed(9).slice(2)}$`,Wr="?"+Me,c_=`<${Wr}>`,wn=document,No=()=>wn.createComment(""),qo=t=>t===null||typeof t!="object"&&typeof t!="function",Ir=Array.isArray,_d=t=>Ir(t)||typeof t?.[Symbol.iterator]=="function",Lr=`[ 	
\f\r]`,jo=/<(?:(!--|\/[^a-zA-Z])|(\/?[a-zA-Z][^>\s]*)|(\/?$))/g,pd=/-->/g,md=/>/g,$n=RegExp(`>|${Lr}(?:([^\\s"'>=/]+)(${Lr}*=${Lr}*(?:[^ 	
\f\r"'\`<>=]|("|')|))|$)`,"g"),fd=/'/g,hd=/"/g,$d=/^(?:script|style|textarea|title)$/i,Hr=t=>(e,...n)=>({_$litType$:t,strings:e,values:n}),r=Hr(1),F=Hr(2),D0=Hr(3),Mt=Symbol.for("lit-noChange"),u=Symbol.for("lit-nothing"),gd=new WeakMap,bn=wn.createTreeWalker(wn,129);function bd(t,e){if(!Ir(t)||!t.hasOwnProperty("raw"))throw Error("invalid template strings array");return cd!==void 0?cd.createHTML(e):e}var wd=(t,e)=>{let n=t.length-1,o=[],i,s=e===2?"<svg>":e===3?"<math>":"",a=jo;for(let d=0;d<n;d++){let c=t[d],p,m,_=-1,$=0;for(;$<c.length&&(a.lastIndex=$,m=a.exec(c),m!==null);)$=a.lastIndex,a===jo?m[1]==="!--"?a=pd:m[1]!==void 0?a=md:m[2]!==void 0?($d.test(m[2])&&(i=RegExp("</"+m[2],"g")),a=$n):m[3]!==void 0&&(a=$n):a===$n?m[0]===">"?(a=i??jo,_=-1):m[1]===void 0?_=-2:(_=a.lastIndex-m[2].length,p=m[1],a=m[3]===void 0?$n:m[3]==='"'?hd:fd):a===hd||a===fd?a=$n:a===pd||a===md?a=jo:(a=$n,i=void 0);let w=a===$n&&t[d+1].startsWith("/>")?" ":"";s+=a===jo?c+c_:_>=0?(o.push(p),c.slice(0,_)+Br+c.slice(_)+Me+w):c+Me+(_===-2?d:w)}return[bd(t,s+(t[n]||"<?>")+(e===2?"</svg>":e===3?"</math>":"")),o]},Uo=class t{constructor({strings:e,_$litType$:n},o){let i;this.parts=[];let s=0,a=0,d=e.length-1,c=this.parts,[p,m]=wd(e,n);if(this.el=t.createElement(p,o),bn.currentNode=this.el.content,n===2||n===3){let _=this.el.content.firstChild;_.replaceWith(..._.childNodes)}for(;(i=bn.nextNode())!==null&&c.length<d;){if(i.nodeType===1){if(i.hasAttributes())for(let _ of i.getAttributeNames())if(_.endsWith(Br)){let $=m[a++],w=i.getAttribute(_).split(Me),R=/([.?@])?(.*)/.exec($);c.push({type:1,index:s,name:R[2],strings:w,ctor:R[1]==="."?Xi:R[1]==="?"?ts:R[1]==="@"?es:vn}),i.removeAttribute(_)}else _.startsWith(Me)&&(c.push({type:6,index:s}),i.removeAttribute(_));if($d.test(i.tagName)){let _=i.textContent.split(Me),$=_.length-1;if($>0){i.textContent=Yi?Yi.emptyScript:"";for(let w=0;w<$;w++)i.append(_[w],No()),bn.nextNode(),c.push({type:2,index:++s});i.append(_[$],No())}}}else if(i.nodeType===8)if(i.data===Wr)c.push({type:2,index:s});else{let _=-1;for(;(_=i.data.indexOf(Me,_+1))!==-1;)c.push({type:7,index:s}),_+=Me.length-1}s++}}static createElement(e,n){let o=wn.createElement("template");return o.innerHTML=e,o}};function yn(t,e,n=t,o){if(e===Mt)return e;let i=o!==void 0?n._$Co?.[o]:n._$Cl,s=qo(e)?void 0:e._$litDirective$;return i?.constructor!==s&&(i?._$AO?.(!1),s===void 0?i=void 0:(i=new s(t),i._$AT(t,n,o)),o!==void 0?(n._$Co??=[])[o]=i:n._$Cl=i),i!==void 0&&(e=yn(t,i._$AS(t,e.values),i,o)),e}var Zi=class{constructor(e,n){this._$AV=[],this._$AN=void 0,this._$AD=e,this._$AM=n}get parentNode(){return this._$AM.parentNode}get _$AU(){return this._$AM._$AU}u(e){let{el:{content:n},parts:o}=this._$AD,i=(e?.creationScope??wn).importNode(n,!0);bn.currentNode=i;let s=bn.nextNode(),a=0,d=0,c=o[0];for(;c!==void 0;){if(a===c.index){let p;c.type===2?p=new Hn(s,s.nextSibling,this,e):c.type===1?p=new c.ctor(s,c.name,c.strings,this,e):c.type===6&&(p=new ns(s,this,e)),this._$AV.push(p),c=o[++d]}a!==c?.index&&(s=bn.nextNode(),a++)}return bn.currentNode=wn,i}p(e){let n=0;for(let o of this._$AV)o!==void 0&&(o.strings!==void 0?(o._$AI(e,o,n),n+=o.strings.length-2):o._$AI(e[n])),n++}},Hn=class t{get _$AU(){return this._$AM?._$AU??this._$Cv}constructor(e,n,o,i){this.type=2,this._$AH=u,this._$AN=void 0,this._$AA=e,this._$AB=n,this._$AM=o,this.options=i,this._$Cv=i?.isConnected??!0}get parentNode(){let e=this._$AA.parentNode,n=this._$AM;return n!==void 0&&e?.nodeType===11&&(e=n.parentNode),e}get startNode(){return this._$AA}get endNode(){return this._$AB}_$AI(e,n=this){e=yn(this,e,n),qo(e)?e===u||e==null||e===""?(this._$AH!==u&&this._$AR(),this._$AH=u):e!==this._$AH&&e!==Mt&&this._(e):e._$litType$!==void 0?this.$(e):e.nodeType!==void 0?this.T(e):_d(e)?this.k(e):this._(e)}O(e){return this._$AA.parentNode.insertBefore(e,this._$AB)}T(e){this._$AH!==e&&(this._$AR(),this._$AH=this.O(e))}_(e){this._$AH!==u&&qo(this._$AH)?this._$AA.nextSibling.data=e:this.T(wn.createTextNode(e)),this._$AH=e}$(e){let{values:n,_$litType$:o}=e,i=typeof o=="number"?this._$AC(e):(o.el===void 0&&(o.el=Uo.createElement(bd(o.h,o.h[0]),this.options)),o);if(this._$AH?._$AD===i)this._$AH.p(n);else{let s=new Zi(i,this),a=s.u(this.options);s.p(n),this.T(a),this._$AH=s}}_$AC(e){let n=gd.get(e.strings);return n===void 0&&gd.set(e.strings,n=new Uo(e)),n}k(e){Ir(this._$AH)||(this._$AH=[],this._$AR());let n=this._$AH,o,i=0;for(let s of e)i===n.length?n.push(o=new t(this.O(No()),this.O(No()),this,this.options)):o=n[i],o._$AI(s),i++;i<n.length&&(this._$AR(o&&o._$AB.nextSibling,i),n.length=i)}_$AR(e=this._$AA.nextSibling,n){for(this._$AP?.(!1,!0,n);e!==this._$AB;){let o=dd(e).nextSibling;dd(e).remove(),e=o}}setConnected(e){this._$AM===void 0&&(this._$Cv=e,this._$AP?.(e))}},vn=class{get tagName(){return this.element.tagName}get _$AU(){return this._$AM._$AU}constructor(e,n,o,i,s){this.type=1,this._$AH=u,this._$AN=void 0,this.element=e,this.name=n,this._$AM=i,this.options=s,o.length>2||o[0]!==""||o[1]!==""?(this._$AH=Array(o.length-1).fill(new String),this.strings=o):this._$AH=u}_$AI(e,n=this,o,i){let s=this.strings,a=!1;if(s===void 0)e=yn(this,e,n,0),a=!qo(e)||e!==this._$AH&&e!==Mt,a&&(this._$AH=e);else{let d=e,c,p;for(e=s[0],c=0;c<s.length-1;c++)p=yn(this,d[o+c],n,c),p===Mt&&(p=this._$AH[c]),a||=!qo(p)||p!==this._$AH[c],p===u?e=u:e!==u&&(e+=(p??"")+s[c+1]),this._$AH[c]=p}a&&!i&&this.j(e)}j(e){e===u?this.element.removeAttribute(this.name):this.element.setAttribute(this.name,e??"")}},Xi=class extends vn{constructor(){super(...arguments),this.type=3}j(e){this.element[this.name]=e===u?void 0:e}},ts=class extends vn{constructor(){super(...arguments),this.type=4}j(e){this.element.toggleAttribute(this.name,!!e&&e!==u)}},es=class extends vn{constructor(e,n,o,i,s){super(e,n,o,i,s),this.type=5}_$AI(e,n=this){if((e=yn(this,e,n,0)??u)===Mt)return;let o=this._$AH,i=e===u&&o!==u||e.capture!==o.capture||e.once!==o.once||e.passive!==o.passive,s=e!==u&&(o===u||i);i&&this.element.removeEventListener(this.name,this,o),s&&this.element.addEventListener(this.name,this,e),this._$AH=e}handleEvent(e){typeof this._$AH=="function"?this._$AH.call(this.options?.host??this.element,e):this._$AH.handleEvent(e)}},ns=class{constructor(e,n,o){this.element=e,this.type=6,this._$AN=void 0,this._$AM=n,this.options=o}get _$AU(){return this._$AM._$AU}_$AI(e){yn(this,e)}},yd={M:Br,P:Me,A:Wr,C:1,L:wd,R:Zi,D:_d,V:yn,I:Hn,H:vn,N:ts,U:es,B:Xi,F:ns},p_=Er.litHtmlPolyfillSupport;p_?.(Uo,Hn),(Er.litHtmlVersions??=[]).push("3.3.3");var he=(t,e,n)=>{let o=n?.renderBefore??e,i=o._$litPart$;if(i===void 0){let s=n?.renderBefore??null;o._$litPart$=i=new Hn(e.insertBefore(No(),s),s,void 0,n??{})}return i._$AI(t),i};var jr=globalThis,jn=class extends De{constructor(){super(...arguments),this.renderOptions={host:this},this._$Do=void 0}createRenderRoot(){let e=super.createRenderRoot();return this.renderOptions.renderBefore??=e.firstChild,e}update(e){let n=this.render();this.hasUpdated||(this.renderOptions.isConnected=this.isConnected),super.update(e),this._$Do=he(n,this.renderRoot,this.renderOptions)}connectedCallback(){super.connectedCallback(),this._$Do?.setConnected(!0)}disconnectedCallback(){super.disconnectedCallback(),this._$Do?.setConnected(!1)}render(){return Mt}};jn._$litElement$=!0,jn.finalized=!0,jr.litElementHydrateSupport?.({LitElement:jn});var m_=jr.litElementPolyfillSupport;m_?.({LitElement:jn});(jr.litElementVersions??=[]).push("4.2.2");var vd=()=>{},Nr=!1;function kd(t){vd=t}function Q(){Nr||(Nr=!0,queueMicrotask(()=>{Nr=!1,vd()}))}function xd(t){return t.split("/").slice(1).map(e=>e.replaceAll("~1","/").replaceAll("~0","~"))}var U=t=>t.replaceAll("~","~0").replaceAll("/","~1");function b(t,e){let n=t;for(let o of xd(e)){if(n===null||typeof n!="object")return;n=n[o]}return n}function M(t,e,n){return qr(t,xd(e),n)}function qr(t,e,n){let[o,...i]=e;if(o===void 0)return n;if(Array.isArray(t)){let d=[...t],c=qr(d[Number(o)],i,n);return c===void 0?d.splice(Number(o),1):d[Number(o)]=c,d}let s={...t??{}},a=qr(s[o],i,n);return a===void 0?delete s[o]:s[o]=a,s}var at=["pour","pipe","apart"],kt=["studio","own_fats","own_tips"],os=t=>kt.includes(t);var Td={};function ne(t,e){(Td[t]??=[]).push(e)}function mt(t,e){for(let n of Td[t]??[])n(e)}var Ot=t=>t.slice(0,t.lastIndexOf("/")+1),jt=t=>t.slice(t.lastIndexOf("/")+1),Rd=(t,e)=>{let n=Ot(t);return n?f_(n+e):e};function f_(t){let e=[];for(let n of t.split("/"))n===".."?e.pop():n!=="."&&e.push(n);return e.join("/")}function Ne(t,e){return(t.toLowerCase().replaceAll(/[^a-z0-9]+/g,"_").replace(/^_+|_+$/g,"").slice(0,60)||"mine")+e}function Nn(t,e){let[,n,o]=/^(.*?)((?:\.(?:run|formula|fats|tips))?\.\w+)$/.exec(t)??["",t,""];for(let i=1;;++i){let s=i===1?t:`${n}_${i}${o}`;if(!e.some(a=>a.file===s))return s}}var h_=["mould","formula","file","own_fats","own_tips"];function Ur(t,e=""){return t===null||typeof t!="object"?[]:Object.entries(t).flatMap(([n,o])=>{let i=`${e}/${n}`;return typeof o!="string"?Ur(o,i):h_.includes(n)?[i]:[]})}function zr(t,e){let[n,o]=[t,e];for(let i of["/$schema","/id",...Ur(t)])[n,o]=[M(n,i,void 0),M(o,i,void 0)];return JSON.stringify(n)===JSON.stringify(o)}function Jr(t,e){let n=["/id",...Ur(t)].filter(o=>b(t,o)!==b(e,o));return o=>n.reduce((i,s)=>b(i,s)===b(t,s)?M(i,s,b(e,s)):i,o)}var Z=(t,e)=>({name:t,label:e,unit:"mm"}),qe=Z("height","Floor to brim"),is={name:"draft",label:"Draft angle of the wall",unit:"\xB0",optional:!0},Vr={block:{words:"Box, loaf or slab",measures:[Z("length","Longer side at the brim"),Z("width","Shorter side"),qe,is,{...Z("corner_radius","Corner radius"),optional:!0}]},frustum:{words:"Round cup",measures:[Z("floor_diameter","Across the floor"),Z("brim_diameter","Across the brim"),qe]},fluted_cup:{words:"Fluted cup",measures:[Z("floor_diameter","Across the floor"),Z("brim_diameter","Across the brim"),qe,{name:"flutes",label:"Flutes",unit:"",count:!0},Z("flute_depth","Depth of a flute")]},polygon:{words:"Regular polygon",measures:[{name:"sides",label:"Sides",unit:"",count:!0},Z("across_flats","Across the flats"),qe,is]},dome:{words:"Bowl",measures:[Z("diameter","Across the brim"),qe]},half_ball:{words:"Half ball",measures:[Z("diameter","Across the brim")]},ball:{words:"Ball",measures:[Z("diameter","Across")]},half_ring:{words:"Half ring",measures:[Z("centre_diameter","Ring, middle to middle of the tube"),Z("tube_diameter","Across the tube")]},turned_ring:{words:"Ring with a post",measures:[Z("outer_floor_diameter","Cup, across the floor"),Z("outer_brim_diameter","Cup, across the brim"),Z("post_floor_diameter","Post, at its foot"),Z("post_brim_diameter","Post, at its top"),qe]},turned_profile:{words:"Round, by its wall from the side",measures:[],points:{columns:[Z("height","Height"),Z("radius","Middle to wall")],least:2,words:"From the lowest point up to the brim: how high, and from the middle line out to the wall, half the width there. A round floor begins with 0 from the middle; a flat one with half its width."}},outline:{words:"Any outline, straight up",measures:[qe,is],points:{columns:[Z("x","From the left"),Z("y","From below")],least:3,words:"The corners of the brim, one after the other as one walks round it. Draw a rectangle round the brim and measure from its left side and from its lower side."}},heart:{words:"Heart",measures:[Z("side","Straight edge, tip to round"),qe,is]}},Sd=Object.fromEntries(Object.entries(Vr).map(([t,{words:e}])=>[t,e])),qn=t=>Vr[t]?.measures??[],Ue=t=>Vr[t]?.points;var Kr=(t,e)=>String(b(t,e)??"").trim(),zo=t=>Kr(t,"/shape/kind"),oe=(t,e)=>b(t,`/${e}`)!==void 0,Qr=t=>["body","skin"].includes(Kr(t,"/mesh/role"));function Nt(t,e){let n=b(t,e);return Array.isArray(n)?n:[]}function Ad(t,e){return(Ue(zo(t))?.columns??[]).map(({name:o})=>String(b(e,`/${o}`)??"").trim())}function Jo(t){return Nt(t,"/shape/points").flatMap((e,n)=>Ad(t,e).every(Boolean)?[n]:[])}function ss(t){let e=n=>n.some(Boolean)&&!n.every(Boolean);return Nt(t,"/shape/points").flatMap((n,o)=>e(Ad(t,n))?[o]:[])}var Gr=t=>Nt(t,"/water/weighings").flatMap((e,n)=>String(e).trim()?[n]:[]);function Pd(t){let e=t,n=(o,i)=>{if(!Array.isArray(b(e,o)))return;let s=i.map(a=>b(t,`${o}/${a}`));e=M(e,o,s)};return Ue(zo(t))&&n("/shape/points",Jo(t)),n("/water/weighings",Gr(t)),e}function rs(t,e){let[,n,o,i]=/^(\/shape\/points|\/water\/weighings)\/(\d+)(.*)$/.exec(e)??[];if(!n)return e;let s=n==="/shape/points"?Jo(t):Gr(t);return`${n}/${s[Number(o)]??o}${i}`}function Vo(t){let e=[],n=i=>Kr(t,i)!=="",o=(i,s)=>{i||e.push(s)};if(oe(t,"shape")){let i=zo(t);o(i!=="","the shape");for(let{name:a,label:d,optional:c}of qn(i))o(c||n(`/shape/${a}`),d.toLowerCase());let s=Ue(i);s&&o(Jo(t).length>=s.least,`${s.least} points at least`)}if(oe(t,"water")){o(n("/water/temperature"),"the water's temperature"),o(b(t,"/water/filled_to")!==void 0,"how far the water was filled");for(let i of["depth","below_brim"])o(b(t,`/water/filled_to/${i}`)===void 0||n(`/water/filled_to/${i}`),"the water's line");o(n("/water/weighed_in"),"what was weighed"),o(Gr(t).length>0,"a weighing of water")}return!Qr(t)&&!oe(t,"mesh")&&o(n("/cavities"),"how many cavities one mould has"),e}var kn={name:"run",list:"runs",new_name:({shipped:t,file:e,now:n})=>t?jt(e):Ne(String(n.name),".run.json"),written:t=>t,is_begun:()=>!0},Un={name:"formula",list:"formulas",new_name:({shipped:t,file:e,now:n})=>t?jt(e):Ne(String(n.name),".formula.json"),written:t=>t,is_begun:()=>!0},Yr=(t,e)=>({name:t,list:e,new_name:({file:n})=>jt(n),written:n=>n,is_begun:()=>!0}),as=Yr("studio","studios"),ls=Yr("fats","fats"),us=Yr("tips","tips"),Ft={name:"mould",list:"moulds",new_name:({now:t})=>Ne(String(t.name),".json"),written:t=>({...Pd(t),name:String(t.name??"").trim()}),is_begun:t=>oe(t,"shape")||oe(t,"mesh")};var Dd={},Md={kind:kn,id:"",file:"",version:null,shipped:!1,now:Dd,saved:Dd,unanswered:[]},At={view:"reading",came_from:"set-up",formula_of:"pour",fats:[],catalogue:[],own_tips:{},own_fats:{},own_moulds:{},run:Md,formulas:{},beside:{},past:[],future:[],quote_wish:{figure:""},is_old:!1,dangers:{run:[],apart:[]},list_complaint:"",list_told:"",bench:{run:"",batches:[],complaints:[],acts:[]},new_formula:{name:"",copied:""},printing:{paper:localStorage.getItem("paper")==="Letter"?"Letter":"A4",batch:0,is_working:!1,told:""},touched:new Set,has_asked:!1,open:new Set($_()),folded:new Set,units:g_(),announcement:""},l=At;function g_(){let t=localStorage.getItem("units");return t==="metric"||t==="us"?t:"both"}var Zr=t=>`numbers ${String(t.now.id??t.file)}`,__=t=>({numbers:localStorage.getItem(Zr(t))??void 0,figure:""});function Ko(t){h({quote_wish:{...At.quote_wish,...t}});let{numbers:e}=At.quote_wish;e?.trim()?localStorage.setItem(Zr(At.run),e):localStorage.removeItem(Zr(At.run))}var Od="set-up ";function $_(){try{let t=JSON.parse(localStorage.getItem("parts")??"[]");return Array.isArray(t)?t.filter(e=>typeof e=="string"):[]}catch{return[]}}function b_(){let t=[...At.open].filter(e=>e.startsWith(Od));localStorage.setItem("parts",JSON.stringify(t))}function h(t){Object.assign(At,t),Q()}var E=t=>h({announcement:t});function y(t,e){Object.assign(t,e),Q()}function ge(t,e){let{[t]:n,...o}=At.formulas;h({formulas:e?{...o,[t]:e}:o})}function Kt(t,e){let n=new Set(At[t]);n.delete(e)||n.add(e),h({[t]:n}),e.startsWith(Od)&&b_()}function zn(t=Md){h({run:t,formulas:{},beside:{},touched:new Set,has_asked:!1,past:[],future:[],dangers:{run:[],apart:[]},changed_beside:void 0,fault:void 0,plan:void 0,quote_wish:__(t),quoted:void 0,complaint:void 0,finding:void 0,typed:void 0,measured:void 0})}function lt(t){At.open.has(t)||h({open:new Set(At.open).add(t)})}function xn(t,e,{name:n,note:o}={}){if(!At.files)return;let i={file:e,name:String(n??""),note:String(o??""),shipped:!1},s=At.files[t].filter(d=>d.file!==e),a=At.files[t].findIndex(d=>d.file===e);s.splice(a<0?s.length:a,0,i),h({files:{...At.files,[t]:s}})}async function _e({kind:t,name:e,text:n,from:o,about_to:i,is_own:s}){for(;;){let{runs:a=[],formulas:d=[],moulds:c=[],studios:p=[],fats:m=[],tips:_=[]}=l.files??{},$=Nn(e,[...a,...d,...c,...p,...m,..._]);i?.($);let w=await w_($,n,o);if(xn(t.list,$,dt(w.there.text)??{name:$}),w.is_new||s?.(w.there))return w.there}}async function w_(t,e,n){try{return{is_new:!0,there:await In({file:t,version:null,text:e,from:n})}}catch(o){if(!(o instanceof v)||o.status!==409)throw o;return{is_new:!1,there:o.answer}}}var ds=t=>`unsaved ${t.name} ${l.files?.folder??""} `;function Tn({kind:t,id:e,file:n,version:o,shipped:i,now:s},a){if(t.is_begun(s))try{let d={id:e,file:n,version:o,shipped:i,text:tt(s),copy:a};localStorage.setItem(ds(t)+e,JSON.stringify(d))}catch{}}function Xr(t,e){try{return JSON.parse(localStorage.getItem(ds(t)+e)??"null")??void 0}catch{return}}var ze=(t,e)=>localStorage.removeItem(ds(t)+e),Fd=()=>Object.keys(localStorage).some(t=>t.startsWith("unsaved "));function cs(t){let e=ds(t);return Object.keys(localStorage).flatMap(o=>o.startsWith(e)?[o.slice(e.length)]:[]).sort().flatMap(o=>Xr(t,o)??[])}var y_=300,V=t=>t.now!==t.saved;function Qo(t,e,n=crypto.randomUUID()){return{kind:t,id:n,file:"",version:null,shipped:!1,now:e,saved:void 0,unanswered:[]}}async function Ct(t,e,n=e){let o=await ed(e),i=v_(t,JSON.parse(o.text),o.shipped),s=Xr(t,n),a=s?.copy&&o.shipped?await k_(t,s,i):void 0;if(a)return ze(t,n),Ct(t,a);let{version:d,shipped:c=!1}=o,p={kind:t,id:n,file:e,version:d,shipped:c,now:i,saved:i,unanswered:[]};return s&&x_(p,s,o),p}var v_=(t,e,n=!1)=>t.name==="run"&&!n&&e.id===void 0?{...e,id:crypto.randomUUID()}:e;async function k_(t,e,n){if(!l.files?.[t.list].some(s=>s.file===e.copy))return;let o=dt(e.text),i=dt((await vt(e.copy)).text);if(!(!o||!i||tt(o)===tt(n)))return zr(t.written(o),i)?e.copy:void 0}function x_(t,e,n){let o=dt(e.text);if(!o||tt(o)===tt(t.now))return ze(t.kind,t.id);y(t,{now:o}),!(e.version===n.version||n.shipped)&&(y(t,{version:e.version}),jd(t,n))}function bt(t,e){let n=t.now;y(t,{now:e,failed:void 0,...t.is_taken?{set_aside:void 0,is_taken:void 0}:{}}),Tn(t),mt("edited",{file:t,before:n})}var Cd=new WeakMap,ta=async t=>Cd.get(t),$e=t=>Ld(t,()=>T_(t)),Jn=t=>Ld(t,()=>t.shipped?Ed(t,Bd):Promise.resolve());function Ld(t,e){let n=ta(t).then(e);return Cd.set(t,n.catch(()=>{})),n}async function T_(t){!V(t)||t.theirs||await Ed(t,t.shipped||!t.file?Bd:Wd)}async function Ed(t,e){y(t,{failed:void 0});try{await e(t)}catch(n){throw n instanceof v&&y(t,{failed:K(n.complaint)}),n}}async function Bd(t){let{kind:e,id:n,now:o}=t,i=t.shipped?t.file:void 0,s=e.written(o),a=await _e({kind:e,name:e.new_name(t),text:tt(s),from:i,about_to:m=>Tn(t,m),is_own:({text:m})=>i!==void 0&&zr(s,dt(m)??{})}),d=JSON.parse(a.text),c=Jr(s,d),p=t.now===o?d:c(t.now);ze(e,n),y(t,{id:a.file,file:a.file,version:a.version,shipped:!1,now:p,saved:d}),V(t)&&Tn(t),i!==void 0&&mt("copied",{file:t,from:i,renamed:c})}async function Wd(t){let{version:e,now:n}=t,o=tt(t.kind.written(n));y(t,{unanswered:[...new Set(t.unanswered).add(o)]});try{ps(t,n,(await In({file:t.file,version:e,text:o})).version)}catch(i){if(!(i instanceof v)||i.status!==409)throw i;Id(t,i.answer),V(t)&&!t.theirs&&await Wd(t)}}function ps(t,e,n){y(t,{saved:e,version:n,theirs:void 0,failed:void 0,unanswered:[]}),V(t)?Tn(t):ze(t.kind,t.id),xn(t.kind.list,t.file,e)}function Id(t,{version:e,text:n}){if(n===tt(t.kind.written(t.now)))return ps(t,t.now,e);let o=n!==null&&t.unanswered.includes(n);if(y(t,{unanswered:[]}),o)return y(t,{version:e,saved:void 0,theirs:void 0});let i=V(t)||t.theirs?void 0:dt(n);i?R_(t,i,e):jd(t,{version:e,text:n})}function R_(t,e,n){mt("giving_way",{file:t}),y(t,{set_aside:t.now,is_taken:!0,now:e}),ps(t,e,n),E(`${t.file} was changed outside this page, and stands here as it is now.`),mt("gave_way",{file:t})}var Hd=t=>y(t,{set_aside:void 0,is_taken:void 0});function jd(t,{version:e,text:n}){y(t,{theirs:{version:e,text:n}}),Tn(t),E(n===null?`${t.file} was deleted outside this page. Save it again, or leave it deleted?`:`${t.file} was changed outside this page. Which version do you want to keep?`),mt("conflict",{file:t})}function Nd(t){if(!t.theirs)return;let e=dt(t.theirs.text);if(!e){let n=`what is in ${t.file} now is no ${t.kind.name}; keep what is on this page`;return y(t,{failed:n})}mt("giving_way",{file:t}),y(t,{set_aside:t.now,now:e}),ps(t,e,t.theirs.version),mt("gave_way",{file:t})}function qd(t){t.theirs&&(y(t,{version:t.theirs.version,saved:void 0,theirs:void 0,failed:void 0}),Tn(t),mt("unwritten",{file:t}))}var Rn=({theirs:t})=>t?.text===null;function Ud(t){Rn(t)&&(ze(t.kind,t.id),y(t,{saved:t.now,theirs:void 0,failed:void 0}),E(`${t.file} stays deleted.`),mt("left_deleted",{file:t}))}function zd(t){if(!t.set_aside)return;let{set_aside:e,now:n}=t,o=t.is_taken;bt(t,e),y(t,{set_aside:o?void 0:n})}var Jd=t=>(t.theirs??t).version;function Vd(t,e){y(t,{id:e,file:e}),mt("renamed",{file:t,renamed:n=>n})}async function Kd(t){let{version:e,text:n}=await vt(t.file),o=dt(n);if(!o||t.theirs||e===t.version)return;let i=Jr(t.now,o);if(V(t))return y(t,{version:e,now:i(t.now),saved:o});y(t,{version:e,now:o,saved:o}),mt("renamed",{file:t,renamed:i})}var Qd=t=>t.shipped||!t.file?[]:[[t.file,Jd(t)]];async function ea(t,e,n,o){let i=t.file,s=()=>Jd(t)===e&&t.file===i;if(!s()||(await ta(t),!s()))return!1;o(),await na();let a=await S_(i,n);return await ta(t),s()&&(Id(t,a),V(t)&&!t.theirs&&mt("unwritten",{file:t})),!0}async function S_(t,e){let n=await e(t);return n===null?{version:n,text:null}:vt(t)}var na=()=>new Promise(t=>setTimeout(t,y_));var A_=300,P_=1200,ms="",Gd=0;function Go(){let t={run:{file:l.run,now:l.run.now}};for(let e of at){let n=l.formulas[e];n&&(t[e]={file:n,now:n.now})}for(let e of kt){let n=l.beside[e];n&&(t[e]={file:n,now:n.now})}return t}function Je(t=""){let e=performance.now();t&&t===ms&&e-Gd<=P_&&l.past.length||oa(Go()),h({future:[]}),ms=t,Gd=e}var oa=t=>h({past:[...l.past,t].slice(-A_)});function Vn(t){oa(Yd(Go(),t,()=>t.saved??{}))}function Yd(t,e,n){let o=Object.entries(t).map(([i,s])=>s.file===e?[i,{file:e,now:n(s.now)}]:[i,s]);return Object.fromEntries(o)}function ia(t,e){let n=o=>o.map(i=>Yd(i,t,e));h({past:n(l.past),future:n(l.future)})}function fs(){let t=l.past.at(-1);t&&(h({past:l.past.slice(0,-1),future:[...l.future,Go()]}),Xd(t,"Undone"))}function Zd(){let t=l.future.at(-1);t&&(h({past:[...l.past,Go()],future:l.future.slice(0,-1)}),Xd(t,"Redone"))}function Xd(t,e){ms="",h({typed:void 0});for(let n of[...kt,...at,"run"])D_(n,t);E(e)}function D_(t,e){let n=e[t];if(os(t))return M_(t,n);let o=t==="run"?n?.file===l.run:l.formulas[t]!==void 0;!n||!o||(t!=="run"&&ge(t,n.file),n.file.now!==n.now&&bt(n.file,n.now))}function M_(t,e){e&&e.file===l.beside[t]&&e.file.now!==e.now&&bt(e.file,e.now)}var hs=t=>t===l.run||at.some(e=>l.formulas[e]===t)||kt.some(e=>l.beside[e]===t);ne("giving_way",({file:t})=>{hs(t)&&(ms="",oa(Go()),h({typed:void 0}))});for(let t of["copied","renamed"])ne(t,({file:e,renamed:n})=>ia(e,n));function Kn(t){return t==="run"?l.run:os(t)?l.beside[t]:l.formulas[t]}var O_=t=>Kn(t)?.now,g=(t,e)=>b(O_(t),e),D=(t,e)=>String(g(t,e)??"");function ft(t,e){let n=g(t,e);return Array.isArray(n)?n:[]}function ot(t,e,n){let o=g(t,e)??{};return Object.fromEntries(Object.entries(o).filter(([i])=>!n.includes(i)))}function N(t,e,n){let o=Kn(t);!o||b(o.now,e)===n||(Je(`${t} ${e}`),bt(o,M(o.now,e,n)))}function tc(t,e){let n=Kn(t);n&&(Je(),h({typed:void 0}),bt(n,e(n.now)))}function Ve(t){Je(),h({typed:void 0});for(let[e,n]of t){let o=Kn(e);o&&bt(o,n(o.now))}}var Oe=t=>Rd(l.run.file,t);function Lt(t,e){let n=Oe(t);return e?.some(o=>o.file===n)?n:t}var sa=(t,e)=>{let{[t]:n,...o}=l.beside;h({beside:e?{...o,[t]:e}:o})};function nc(t){for(let e of kt)l.beside[e]===t&&sa(e,void 0)}async function F_(t,e){try{let n=await Ct(t,e);return V(n)&&Vn(n),n}catch(n){if(!(n instanceof v||n instanceof SyntaxError))throw n;return}}async function Sn(t,e,n){let o=l.beside[t];if(o?.file===n)return o;let i=await F_(e,n);return sa(t,i),i&&V(i)&&mt("unwritten",{file:i}),i?.theirs&&mt("conflict",{file:i}),i}var oc=()=>Oe("studio.json");async function Qn(t=!1){let e=oc(),n=(l.files?.studios??[]).some(o=>o.file===e);l.beside.studio?.file!==e&&(n||t?await Sn("studio",as,e):sa("studio",void 0))}async function ic(){l.run.shipped&&await Jn(l.run);let t=oc();await Sn("studio",as,t)||(await C_(t),await Sn("studio",as,t))}async function C_(t){try{await In({file:t,version:null,text:tt({schema:"brimwright.studio/1"})})}catch(e){if(!(e instanceof v)||e.status!==409)throw e}xn("studios",t)}var ec=(t,e)=>Ot(t.file)+e;async function L_(t){try{return dt((await vt(t)).text)!==void 0}catch(e){if(!(e instanceof v))throw e;return!1}}async function gs(t){let e=l.formulas[t];if(!e)return;e.shipped&&await Jn(e);let n=String(b(e.now,"/own_fats")??"");if(n){let a=ec(e,n);return Sn("own_fats",ls,await L_(a)?a:n)}let o=(l.files?.fats??[]).find(a=>!a.shipped&&Ot(a.file)===Ot(e.file)),i={schema:"brimwright.fats/1",fats:[]},s=o?.file??await sc(ls,ec(e,"my.fats.json"),i);return N(t,"/own_fats",jt(s)),Sn("own_fats",ls,s)}async function ra(){l.run.shipped&&await Jn(l.run);let t="/pipe/beads/own_tips",n=String(b(l.run.now,t)??"")||String(b(l.beside.studio?.now,"/own_tips")??"");if(n)return Sn("own_tips",us,Oe(n));let o=Ot(l.run.file),i=(l.files?.tips??[]).find(d=>!d.shipped&&Ot(d.file)===o),s={schema:"brimwright.tips/2",tips:[]},a=i?.file??await sc(us,`${o}my.tips.json`,s);return l.beside.studio?N("studio","/own_tips",jt(a)):N("run",t,jt(a)),Sn("own_tips",us,a)}async function sc(t,e,n){let{file:o}=await _e({kind:t,name:e,text:tt(n)});return xn(t.list,o),o}function rc(t,e){let n=(i,s)=>String(b(i,s)??"").endsWith(jt(e));for(let i of at)t===l.beside.own_fats&&n(l.formulas[i]?.now,"/own_fats")&&N(i,"/own_fats",t.file);let o="/pipe/beads/own_tips";t===l.beside.own_tips&&n(l.run.now,o)&&N("run",o,t.file)}var Yo=[],Zo=()=>Yo.at(-1);function aa(t){Yo=[...Yo,t],h({list_told:t.words}),E(t.words)}async function uc(){let t=Zo();t&&(await t.undo(),Yo=Yo.slice(0,-1),h({list_told:""}),E("Undone"),await Ke())}var Ke=async()=>h({files:await Wn()});async function dc(t,e){let{$schema:n,...o}=JSON.parse((await vt(e.file)).text),i=`${e.name||e.file}, copy`,s={...o,name:i,...t.name==="run"?{id:crypto.randomUUID()}:{}},{file:a}=await _e({kind:t,name:t.new_name(Qo(t,s)),text:tt(s),from:e.file});return await Ke(),aa({words:`Copied ${e.name||e.file}.`,undo:async()=>{await Mr(a,!0)}}),a}var cc=t=>/(\.(run|formula))?\.json$/.exec(t)?.[0]??"",Xo=t=>jt(t).slice(0,-cc(t).length||void 0),pc=(t,e)=>Ot(t)+e+cc(t),ac=t=>[l.run,...at.map(e=>l.formulas[e])].find(e=>e?.file===t);async function mc(t,e,n){let o={name:e.name,note:e.note,stem:Xo(e.file)};await lc(t,e.file,n),await Ke();let i=pc(e.file,n.stem);aa({words:`Changed ${n.name||i}.`,undo:()=>lc(t,i,o)})}async function lc(t,e,{name:n,note:o,stem:i}){let s=ac(e),a=s??await Ct(t,e),{note:d,...c}=a.now,p=o?{...c,name:n,note:o}:{...c,name:n};if(tt(p)!==tt(a.now)&&(s&&Je(),bt(a,p),await $e(a),a.theirs))throw new Error(`${e} was changed outside this page just now. Look at it again.`);let m=pc(e,i);if(m===e)return;let{renamed_in:_}=await Bu(e,m);s&&Vd(s,m);for(let $ of _){let w=ac($);w&&await Kd(w)}}async function fc(t,e){let{removed:n}=await Mr(t.file,e);l.run.file===t.file&&zn(),await Ke(),aa({words:`Removed ${t.name||t.file}.`,undo:async()=>{await Wu(n)}})}async function Qe(){for(let t of["pour","pipe"]){let e=b(l.run.now,`/${t}/formula`);typeof e=="string"&&e?await E_(t,Lt(e,l.files?.formulas)):ge(t,void 0)}}async function E_(t,e){if(l.formulas[t]?.file===e)return;let n=at.map(o=>l.formulas[o]).find(o=>o?.file===e);if(ge(t,n),!n)try{let o=await la(e);ge(t,o),V(o)&&mt("unwritten",{file:o}),o.theirs&&mt("conflict",{file:o})}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o}}async function la(t){let e=await Ct(Un,t);return V(e)&&Vn(e),e}var hc=t=>Eu("GET",`/api/bench?run=${encodeURIComponent(t)}`),gc=t=>Bo("/api/bench/tick",t),_c=t=>Bo("/api/bench/weigh_cup",t),$c=(t,e)=>Bo("/api/bench/anew",{run:t,batch:e}),bc=(t,e)=>Bo("/api/bench/finish",{run:t,batch:e});var B_=1e4,ua=sessionStorage.getItem("tab")??crypto.randomUUID();sessionStorage.setItem("tab",ua);var _s=[],Gn=()=>`bench ${l.files?.folder??""}`;function ie(){try{return[...JSON.parse(localStorage.getItem(Gn())??"[]"),..._s]}catch{return _s}}function wc(t){try{t.length?localStorage.setItem(Gn(),JSON.stringify(t)):localStorage.removeItem(Gn()),_s=[]}catch{_s=t}}var W_=(t,e)=>t.run===e.run&&t.batch===e.batch&&t.key===e.key;function yc(t){let e={...t,id:crypto.randomUUID(),tab:ua,at:Date.now()};wc([...ie().filter(n=>!W_(n,e)),e])}var $s=t=>wc(ie().filter(e=>!t(e))),da=()=>ie().find(t=>t.tab===ua||Date.now()-t.at>B_);var ca=t=>[...new Set(t.flatMap(e=>l.formulas[e]??[]))],pa=()=>kt.flatMap(t=>l.beside[t]??[]),vc=t=>t.filter(e=>e.theirs),Fe=t=>vc([...ca(t==="apart"?["apart"]:["pour","pipe"]),...pa()])[0],bs=()=>[l.run,...ca(at),...pa()].filter(t=>t.is_taken&&!t.theirs),ws=()=>vc([l.run,...ca(at),...pa()]);var ti=()=>l.formulas.apart?"apart":"run",kc=t=>h({dangers:{...l.dangers,[ti()]:t}});function ma(t){let e=t.cautions.filter(n=>n.severity==="danger");kc(e.map(({text:n,topic:o,batter:i,batch_pieces:s})=>({text:n,is_of_heat:o==="heat",batter:i,batch_pieces:s})))}function xc(t){t.lye_heavy&&kc([{text:K(t),is_of_heat:!1}])}var I_=400,H_=2e3,ys=0;function ei(){clearTimeout(ys),ys=window.setTimeout(()=>{se()},I_)}async function se(){clearTimeout(ys);let{run:t}=l;try{await $e(t),V(t)&&!t.theirs&&t===l.run&&ei()}catch(e){if(!(e instanceof v))throw e;e.may_pass&&(ys=window.setTimeout(()=>{se()},H_))}}var Tc=Promise.resolve();function Yn(){let t=Tc.then(j_);return Tc=t.catch(()=>{}),t}async function j_(){for(let t of at){let e=l.formulas[t];!e||!V(e)||e.theirs||(e.shipped&&t!=="apart"&&await Jn(l.run),await $e(e))}for(let t of kt){let e=l.beside[t];e&&V(e)&&!e.theirs&&await $e(e)}}function Rc(t){let e=l.run.now,n=e.pour,o=e.losses,i=n?.moulds_owned===void 0?{}:{moulds_owned:n.moulds_owned},s=Lt(String(n?.mould??""),l.files?.moulds);return{file:Nn("trial.run.json",l.files?.runs??[]),run:{schema:"brimwright.run/2",name:String(e.name??""),sell:e.sell??"",...e.spoilage===void 0?{}:{spoilage:e.spoilage},pour:{mould:s,...i,formula:t,line:n?.line??{}},losses:{pour:o?.pour??{}},scales:e.scales??{},...N_(e)}}}function N_(t){let e={};for(let n of["cut","pots","batch"])t[n]!==void 0&&(e[n]=t[n]);if(e.batch){let{whippings:n,...o}=e.batch;e.batch=o}return e}var re=new Map,ni=new Set,q_={changed:{},unreadable:[]},Zn=()=>new Set([...at.flatMap(t=>l.formulas[t]??[]),...kt.flatMap(t=>l.beside[t]??[])]);async function Sc(){let t=U_(),e=new Set([...Zn()].map(({file:o})=>o));for(let o of re.keys())!t.has(o)&&!e.has(o)&&re.delete(o);for(let o of ni)t.has(o)||ni.delete(o);let n=[...t].filter(o=>!re.has(o));for(let[o,i]of await Ac(n))re.has(o)||re.set(o,i)}async function Ac(t){let e=t.filter(o=>!ni.has(o)),n=e.length?await Wo(new Map(e.map(o=>[o,null]))):q_;return ga(n.unreadable),new Map(t.map(o=>[o,n.changed[o]??null]))}var fa=async t=>(await Ac([t])).get(t)??null,ha=()=>new Map([...re].filter(([t])=>!ni.has(t)));function U_(){let t=new Set,e=o=>{typeof o!="string"||!o||(t.add(Oe(o)),o.includes("..")||t.add(o))},n=l.run.now;t.add(Oe("studio.json")),e(b(n,"/pour/mould")),e(b(n,"/pipe/beads/own_tips"));for(let o of Array.isArray(n.decorations)?n.decorations:[])e(b(o,"/mould"));for(let o of["pour","pipe"])l.formulas[o]||e(b(n,`/${o}/formula`));for(let{file:o,now:i}of Zn()){let s=i.own_fats;typeof s=="string"&&s&&t.add(Ot(o)+s).add(s)}e(b(l.beside.studio?.now,"/own_tips"));for(let o of kt)t.delete(l.beside[o]?.file??"");return t}function Pc(t,{changed:e}){let n=Object.keys(e).filter(o=>re.has(o)&&re.get(o)===t.get(o));for(let o of n)re.set(o,e[o]);return n}var ga=t=>t.forEach(e=>ni.add(e));function Dc(){return[...Zn()].flatMap(({file:t,version:e})=>{let n=re.get(t)??e;return re.delete(t),n===e?[]:[t]})}var Mc=0,_a=()=>Mc;function $a(t){++Mc,h({is_old:!0,changed_beside:t})}var z_=1e3,J_=450,vs=!1,An=!1,ba=0;function et(){h({is_old:!0}),vs?An=!0:Xn()}async function Xn(){if(vs){An=!0;return}vs=!0,Oc(!1);try{do An=!1,await V_();while(An)}finally{vs=!1,Oc(!0),Q()}}async function Cc(){let{run:t}=l,e={file:t.file,run:t.now},n=await nd(e)?.catch(()=>{});!n||t!==l.run||l.plan||Fd()||(h({plan:n,planned:e}),ma(n))}var Oc=t=>{document.documentElement.dataset.settled=String(t)};function Fc(){let{run:t}=l,{apart:e}=l.formulas,{file:n,now:o}=t;return()=>{let i=t===l.run&&(n===t.file||o===t.now);return e===l.formulas.apart&&(e!==void 0||i)}}async function V_(){let t=Fc();try{await Yn(),await Sc(),t=Fc();let{apart:e}=l.formulas;if(Fe(e?"apart":"run"))return h({is_old:!0});let n=_a(),o=e?Rc(e.file):{file:l.run.file,run:l.run.now},i=await Ji(o);if(window.clearTimeout(ba),!t())return void(An=!0);h({plan:i,planned:o,complaint:void 0}),ma(i);let s=n===_a();h({is_old:An||!s}),s&&h({changed_beside:void 0})}catch(e){if(!(e instanceof v))throw e;if(!t())return void(An=!0);K_(e)}}function K_(t){h({is_old:!0}),window.clearTimeout(ba);let e=()=>{h({complaint:t.complaint}),xc(t.complaint)};l.complaint||!l.plan?e():ba=window.setTimeout(e,J_),t.may_pass&&window.setTimeout(et,z_)}var Lc=2e3,Qt=t=>h({bench:{...l.bench,...t}}),Q_=()=>Qt({acts:ie()});addEventListener("storage",({key:t})=>{t===Gn()&&Q_()});function ks(){let{file:t}=l.run;!t||l.bench.run===t||(h({bench:{run:t,batches:[],complaints:[],acts:ie()}}),to().then(ka))}function xs(){let{run:t,version:e}=l.bench;return e===void 0||t!==l.run.file?void 0:{run:t,version:e}}var oi=0;async function to(){let{run:t}=l.bench,e=oi;try{let n=await hc(t);if(t!==l.bench.run)return;if(e!==oi)return await to();Ec(n)}catch(n){if(!(n instanceof v))throw n;if(t!==l.bench.run)return;Qt({failed:K(n.complaint)}),Bc(n)&&setTimeout(()=>l.bench.failed!==void 0&&void to(),Lc)}}var Ec=({batches:t,version:e,complaints:n=[]})=>Qt({batches:t,version:e,complaints:n.map(({line:o})=>o),failed:void 0}),Bc=({may_pass:t,status:e})=>t||e>=500||[401,403].includes(e),eo=t=>l.bench.batches.find(e=>e.batch===t),ya=t=>l.bench.acts.filter(({run:e,batch:n})=>e===l.bench.run&&n===t),no=t=>ya(t).length>0;function Pn(t,e){let n=ya(t).find(i=>i.key===e),o=eo(t)?.ticks[e]!==void 0;return{is_done:n?.done??o,is_waiting:n!==void 0}}function va(t){let e=ya(t).find(n=>n.reading!==void 0);return(e?e.reading:eo(t)?.weigh_cup)??""}function Wc(t,e,n){let{run:o}=l.bench,s=eo(t)!==void 0||!l.planned?void 0:tt(l.planned.run);yc({run:o,batch:t,seen:e,text:s,...n}),Qt({acts:ie(),chosen:t,told:void 0}),ka()}var Ic=(t,e,n,o)=>Wc(t,e,{key:n,done:o}),Hc=(t,e,n)=>Wc(t,e,{reading:n||null}),wa=!1;async function ka(){if(!wa){wa=!0;try{await navigator.locks.request(Gn(),G_)}finally{wa=!1}ie().length&&setTimeout(()=>{ka()},Lc)}}async function G_(){for(let t=da();t;t=da())if(!await Y_(t))return}async function Y_(t){let{id:e}=t;try{let n=await Z_(t);return++oi,$s(o=>o.id===e),X_(n,t.run),!0}catch(n){if(!(n instanceof v))throw n;return Bc(n)?(Qt({unsent:K(n.complaint)}),!1):(await t$(t,n),!0)}}function Z_({run:t,text:e,batch:n,seen:o,key:i,done:s,reading:a}){let d={run:t,text:e,batch:n,seen:o};return i!==void 0?gc({...d,key:i,done:s??!1}):_c({...d,reading:a??null})}function X_(t,e){let n=ie();if(e!==l.bench.run)return Qt({acts:n,unsent:void 0});let i=[...l.bench.batches.filter(s=>s.batch!==t.batch),t].sort((s,a)=>s.batch-a.batch);Qt({acts:n,batches:i,unsent:void 0})}async function t$(t,{complaint:e}){++oi,$s(o=>o.run===t.run&&o.batch===t.batch);let n=`Not taken: ${K(e)}.`;Qt({acts:ie(),unsent:void 0,told:{batch:t.batch,words:n}}),E(n),et(),await to()}async function ii(t){let{run:e}=l.bench;await jc(t,async()=>{let n=await $c(e,t);return $s(o=>o.run===e&&o.batch===t),n})}var xa=t=>jc(t,()=>bc(l.bench.run,t));async function jc(t,e){let{run:n}=l.bench;try{let o=await e();if(++oi,n!==l.bench.run)return;Ec(o),Qt({acts:ie(),told:void 0,chosen:t})}catch(o){if(!(o instanceof v))throw o;Qt({told:{batch:t,words:K(o.complaint)}})}}var Nc=t=>Qt({chosen:t,told:void 0}),qc=()=>Qt({told:void 0});var si=(t,e=0)=>t.map(n=>`M${n.map(([o,i])=>`${o.toFixed(2)} ${(e-i).toFixed(2)}`).join("L")}Z`).join("");function oo(t){let e=new DataView(t).getUint32(12,!0),n=JSON.parse(new TextDecoder().decode(new Uint8Array(t,20,e))),o=s=>20+e+8+(n.bufferViews[n.accessors[s].bufferView].byteOffset??0),i=s=>n.accessors[s].count;return n.meshes.map(({name:s,primitives:[{attributes:a,indices:d,material:c}]})=>({name:s,positions:new Float32Array(t,o(a.POSITION),i(a.POSITION)*3),indices:new Uint32Array(t,o(d),i(d)),colour:n.materials[c].pbrMetallicRoughness.baseColorFactor}))}function zc(t,e,n="upright"){let[o,i,s]=n==="upright"?[1,2,1]:[2,1,-1],a=[],{positions:d,indices:c}=t;for(let p=0;p<c.length;p+=3){let m=[];for(let _=0;_<3;++_){let $=3*c[p+_],w=3*c[p+(_+1)%3],R=d[$+i]-e,Y=d[w+i]-e;if(R>0==Y>0)continue;let Ht=R/(R-Y),_n=[1e3*(d[$]+Ht*(d[w]-d[$])),1e3*s*(d[$+o]+Ht*(d[w+o]-d[$+o]))];R>0?m.push(_n):m.unshift(_n)}m.length===2&&a.push([m[0],m[1]])}return a}function Jc(t){let e=([i,s])=>`${i.toFixed(3)} ${s.toFixed(3)}`,n=new Map;for(let i of t){let s=e(i[0]);n.set(s,[...n.get(s)??[],i])}let o=[];for(let i of t){let s=[],a=n.get(e(i[0]))?.shift();for(;a;)s.push(a[0]),a=n.get(e(a[1]))?.shift();s.length>2&&o.push(s)}return o}function ri(t){let e=t.positions,[n,o,i,s,a,d]=[1/0,-1/0,1/0,-1/0,1/0,-1/0];for(let p=0;p<e.length;p+=3)i=Math.min(i,e[p]),s=Math.max(s,e[p]),a=Math.min(a,e[p+1]),d=Math.max(d,e[p+1]),n=Math.min(n,e[p+2]),o=Math.max(o,e[p+2]);let c=n+(o-n)*.50137;return{loops:Jc(zc(t,c)),left:1e3*i,right:1e3*s,floor:1e3*a,brim:1e3*d,cut_y:-1e3*c}}function Vc(t,e){let[n,o]=[e.floor/1e3,(e.brim-e.floor)/1e3];return[.999,.50137].map(s=>Jc(zc(t,n+s*o,"level"))).reduce((s,a)=>Uc(a)>1.001*Uc(s)?a:s)}function Uc(t){let[e,n]=[1/0,-1/0];for(let o of t)for(let[i]of o)[e,n]=[Math.min(e,i),Math.max(n,i)];return Math.max(0,n-e)}function Ta(t,e){let[n,o]=[1/0,-1/0];for(let i of t.loops)i.forEach(([s,a],d)=>{let[c,p]=i[(d+1)%i.length];if(!(Math.min(a,p)>e||Math.max(a,p)<e))for(let m of a===p?[s,c]:[s+(e-a)/(p-a)*(c-s)])n=Math.min(n,m),o=Math.max(o,m)});return n<=o?[n,o]:[t.left,t.right]}var Kc=40,e$=2e3,Ra=0;async function Qc(t){let e=await je({kind:"glb",gauge:t}),n=oo(await e.arrayBuffer());return n.find(o=>o.name==="cavity")??n[0]}async function io(t){let[e,n]=await Promise.all([He(t),Qc(t)]),o=ri(n);return{gauge:e,outline:o,above:Vc(n,o)}}async function n$(t){let{pockets:e}=await He(t),n=e[0].brim_mm-e[0].floor_mm-.001,o=Array.from({length:Kc},(i,s)=>`${(n*(s+1)/Kc).toFixed(4)} mm`);return He({...t,depth:o})}function ae(){o$()}async function o$(){let t=b(l.run.now,"/pour/mould");if(typeof t!="string")return;let e=++Ra,n=Lt(t,l.files?.moulds);try{let[o,i]=await Promise.all([n$({file:n}),Qc({file:n})]);e===Ra&&h({measured:{mould:n,gauge:o,outline:ri(i)},measuring_failed:void 0})}catch(o){if(e!==Ra)return;if(!(o instanceof v))throw o;h({measured:void 0,measuring_failed:o.message}),o.may_pass&&window.setTimeout(ae,e$)}}var ai=()=>h({own_fats:{}});function Ge(t){let e=li(t);return Array.isArray(e)?[...e,...l.fats]:l.fats}function li(t){let e=l.formulas[t],n=b(e?.now,"/own_fats");if(typeof n!="string"||!n.endsWith(".json")||e===void 0)return;let o=l.beside.own_fats;if(o&&[Ot(e.file)+n,n].includes(o.file))return Yc(o.now)??"none";let i=`${e.file}
${n}`,s=l.own_fats[i];return s||(Gc(i,"waiting"),i$(n,e.file).then(a=>Gc(i,a)),"waiting")}var Gc=(t,e)=>h({own_fats:{...l.own_fats,[t]:e}});async function i$(t,e){for(let n of new Set([Ot(e)+t,t])){let o=Yc(await s$(n));if(o)return o}return"none"}var Yc=t=>Array.isArray(t?.fats)?t.fats.map(r$):void 0;async function s$(t){try{return dt((await vt(t)).text)}catch{return}}var r$=({id:t,name:e,saponification_value:n})=>({id:String(t??""),name:String(e??t??""),own:a$(n)});function a$(t){if(t===null||typeof t!="object")return String(t??"");let{low:e,high:n}=t;return`${String(e)} to ${String(n)}`}var so=[],ui;function Ts(){so.length=0;for(let{file:t,shipped:e}of l.files?.moulds??[])e||so.push(t);ui===void 0&&Xc()}function Zc(t){let e=l.own_moulds[t];return!e&&t!==ui&&!so.includes(t)&&so.push(t),ui===void 0&&so.length&&Xc(),e}async function Xc(){for(;(ui=so.shift())!==void 0;){let t=ui,e=await l$(t);h({own_moulds:{...l.own_moulds,[t]:e}})}}async function l$(t){try{let{pockets:e}=await He({file:t});return{brimful_ml:e[0].brimful_ml,cavities:e.length}}catch(e){if(!(e instanceof v))throw e;let{field:n,problem:o,remedy:i}=e.complaint;return{complaint:[n&&`${n.slice(1).replaceAll("/",", ")} `,o,i&&`; ${i}`].join("")}}}var np=()=>h({own_tips:{}}),Sa=!1;function Aa(){return!l.tips&&!Sa&&(Sa=!0,Ju().then(t=>h({tips:t}),op).finally(()=>Sa=!1)),l.tips??[]}function Pa(t){let e=Oe(t),n=l.beside.own_tips;if(n?.file===e)return ep(n.now);let o=l.own_tips[e];return o||!t||l.typed?o??[]:(tp(e,[]),vt(e).then(({text:i})=>tp(e,ep(dt(i))),op),[])}var tp=(t,e)=>h({own_tips:{...l.own_tips,[t]:e}});function ep(t){let e=t?.tips;return(Array.isArray(e)?e:[]).map(n=>({name:String(n.name)}))}function op(t){if(!(t instanceof v))throw t}var Rs=300,u$=5e3,lp=2e3,d$=500,ip=!1,di=new AbortController,up=()=>di.abort(),dp=()=>document.visibilityState==="hidden";function cp(){if(ip)return;ip=!0;let t=async()=>{di=new AbortController;let e=await c$(di).then(()=>dp()?u$:Rs,()=>di.signal.aborted?Rs:lp);await sp(Rs),await sp(e-Rs,di.signal),t()};t()}var sp=(t,e)=>new Promise(n=>{if(t<=0||e?.aborted)return n();setTimeout(n,t),e?.addEventListener("abort",()=>n())}),pp=()=>[l.run,...l.mould?[l.mould.open]:[],...Zn()],mp=()=>new Map(pp().flatMap(Qd)),rp=()=>JSON.stringify([[...mp().keys()],[...ha().keys()],xs()?.run??null]);async function c$(t){let[e]=Dc();e!==void 0&&await ap(e);let[n,o]=[mp(),ha()],i=new Map([...o,...n]),s=[...o].every(([c,p])=>i.get(c)===p),a=s&&!dp()?await p$(i,t):await Wo(i,xs());a.bench!==void 0&&await to(),ga(a.unreadable),await m$(n,a);let[d]=Pc(o,s?a:await Wo(o));d!==void 0&&await ap(d)}async function p$(t,e){let[n,o]=[rp(),Date.now()],i=window.setInterval(()=>{(rp()!==n||Date.now()-o>Iu+lp)&&e.abort()},d$);try{return await Hu(t,xs(),e.signal)}finally{window.clearInterval(i)}}async function m$(t,{changed:e}){let n=Zn();for(let o of pp()){let i=t.get(o.file);i===void 0||!(o.file in e)||(n.has(o)?await f$(o,i):await ea(o,i,fa,()=>{}))}}async function f$(t,e){await ea(t,e,fa,()=>$a(t.file))&&(ai(),et())}async function ap(t){$a(t),await na(),ai(),np(),h({measured:void 0}),ae(),Ts(),await Promise.all([Qe(),Qn(!0)]),et()}async function fp(t){let e=await td();h({files:e});let n=Xu(e,t.run);try{await Ye(n,n===t.run||!t.run?t.view:void 0)}catch(o){let i=o instanceof v?o.message:`The run opened last can no longer be read: ${String(o)}`;h({fault:i,view:"runs"}),localStorage.removeItem("run")}}async function hp(){let[t,e]=await Promise.all([Uu(),zu()]);h({fats:t,catalogue:e})}var h$=()=>new Promise(t=>setTimeout(t,400));async function Ye(t,e="weigh"){if(!t)return h({view:"runs"});l.run.file&&V(l.run)&&await se();let n=await Ct(kn,t);zn(n),ks(),await Promise.race([Cc(),h$()]),h({view:e}),localStorage.setItem("run",n.file),V(n)&&(Vn(n),ei());let o=Xn().finally(ae);await Promise.all([o,Qe(),Qn()]),cp()}var g$=()=>(l.files?.studios??[]).some(t=>t.file==="studio.json");async function Ss(t){let e=l.run.now,n=e.losses??{},o={schema:"brimwright.run/2",id:crypto.randomUUID(),name:t.name,sell:t.sell,pour:{mould:t.mould,formula:t.formula}};g$()||(o.note=`Losses, scales and spoilage were taken over from "${String(e.name)}": check them.`,e.spoilage!==void 0&&(o.spoilage=e.spoilage),o.losses={pour:n.pour??{}},o.scales=e.scales??{},e.money&&!l.run.shipped&&(o.money=e.money));let{file:i}=await _e({kind:kn,name:Ne(t.name,".run.json"),text:tt(o)});lt("set-up pour"),await Ye(i,"set-up")}var _$="examples/plain_bars.run.json";function Gt(t){ai();let e=Pe(l.view)?l.view:l.came_from;h({view:"formula",came_from:e,formula_of:t,picking:void 0,typed:void 0})}async function ci(t){let e=["pour","pipe"].find(n=>l.run.file&&l.formulas[n]?.file===t);if(e)return Gt(e);l.run.file||await Ye(_$,"reading"),await $$(t)}async function $$(t){let e={past:l.past,future:l.future};h({run_steps:e,past:[],future:[]});try{ge("apart",await la(t))}catch(n){throw h({...e,run_steps:void 0}),n}h({plan:void 0,complaint:void 0}),Gt("apart"),Xn()}async function b$(){let t=l.formulas.apart!==void 0;return await As()?(h({view:t?"weigh":l.came_from,typed:void 0}),!0):!1}async function As(){return l.formulas.apart?await w$()?(Xn(),!0):!1:!0}async function w$(){try{await Yn()}catch(e){if(!(e instanceof v))throw e;return h({complaint:e.complaint}),!1}if(l.formulas.apart?.theirs)return E("Choose first which version of the formula to keep."),window.scrollTo(0,0),!1;ge("apart",void 0);let t={...l.dangers,apart:[]};return h({dangers:t,...l.run_steps,run_steps:void 0,plan:void 0,complaint:void 0}),!0}async function gp(t){let e=l.view==="formula"&&l.formulas[l.formula_of]===t,n=l.formulas.apart===t;for(let o of["pour","pipe"])l.formulas[o]===t&&ge(o,void 0);n&&await As(),e&&h({view:n?"formulas":"set-up",typed:void 0})}async function Da(t){let{file:e}=l.formulas.apart;await b$()&&N("run",`/${t}/formula`,e)}var y$=t=>({schema:"brimwright.formula/2",name:t,fats:[],superfat:"",alkali:[],water:{},pour_temperature:""}),_p=t=>bp(y$(t));async function $p(t,e){let{$schema:n,...o}=JSON.parse((await vt(t)).text);await bp({...o,name:e},t)}async function bp(t,e){let n=Ne(String(t.name),".formula.json"),{file:o}=await _e({kind:Un,name:n,text:tt(t),from:e});await ci(o)}var v$=30,k$=1200,wp=0,Ma=!1,Oa=!1;function Ca(t,e,n){let o=e==="mesh"?l.mesh:void 0;h({mould:{way:e,title:n,open:t,is_old:!1,shapes:{},past:[],future:[]},mesh:o,typed:void 0}),Ea()}var be=()=>h({mould:void 0,mesh:void 0}),ro=(t,e,n)=>Ca(Qo(Ft,t),e,n);async function vp(t,e){let n=await Ct(Ft,t,e?crypto.randomUUID():t),o=String(n.now.name??t);e&&y(n,{now:{...n.now,name:""}}),Ca(n,"form",e?`A copy of ${o}`:`Change ${o}`)}async function kp({id:t,file:e,text:n}){let o=e?await Ct(Ft,e,t):Qo(Ft,JSON.parse(n),t);Ca(o,"form",String(o.now.name??"").trim()||"A mould of your own")}var W=()=>l.mould,O=()=>W().open.now;function ht(t,e){x$(t),bt(W().open,M(O(),t,e))}var Fa="",yp=0;function x$(t){let e=performance.now(),{past:n}=W();(t!==Fa||e-yp>k$||!n.length)&&y(W(),{past:[...n,O()]}),y(W(),{future:[]}),[Fa,yp]=[t,e]}function xp(){let{past:t,future:e,open:n}=W(),o=t.at(-1);o&&(y(W(),{past:t.slice(0,-1),future:[...e,n.now]}),Rp(o,"Undone"))}function Tp(){let{past:t,future:e,open:n}=W(),o=e.at(-1);o&&(y(W(),{past:[...t,n.now],future:e.slice(0,-1)}),Rp(o,"Redone"))}function Rp(t,e){Fa="",h({typed:void 0}),bt(W().open,t),E(e)}var T$=["name","note","owned","unmould_after"];function La(t){let e=O(),n=Object.keys({...t,...e}).filter(a=>t?.[a]!==e[a]);(!t||n.some(a=>!T$.includes(a)))&&y(W(),{is_old:!0});let i=n.some(a=>W().complaint?.field===`/${a}`),s=n.some(a=>!["name","note"].includes(a));(W().is_old||i||s)&&Ea()}function Ea(){clearTimeout(wp),wp=window.setTimeout(()=>{R$()},v$)}async function R$(){if(Ma)return void(Oa=!0);let{mould:t}=l;if(!t)return;let e=t.open.now;if(!(!oe(e,"shape")&&!oe(e,"mesh"))){if(Vo(e).length)return y(t,{complaint:void 0});Ma=!0;try{let n=Ft.written(e),o={file:t.open.file||"new.mould.json",mould:{...n,name:n.name||"New mould"}},i=await io(o);t.open.now===e&&y(t,{answer:i,is_old:!1,complaint:void 0})}catch(n){if(!(n instanceof v))throw n;t.open.now===e&&Ba(n)}finally{Ma=!1,Oa&&Ea(),Oa=!1}}}function Ba(t){let{field:e,problem:n,remedy:o,keep:i,entry:s}=t.complaint,a=e?`${n}; ${o}`:t.message;y(W(),{complaint:{field:rs(O(),e),line:a,keep:i&&{...i,at:rs(O(),i.at)},about:s===void 0?void 0:rs(O(),`${e}/${s}`)}})}var Ps=t=>Object.values(l.formulas).includes(t),pi=t=>Object.values(l.beside).includes(t),Sp=t=>`${String(b(t,"/pour/formula"))}
${String(b(t,"/pipe/formula"))}`;function S$(t,e){b(t,"/pour/mould")!==b(e,"/pour/mould")&&ae(),Sp(t)!==Sp(e)&&Qe(),et(),ei()}var A$=et;function P$(t,e){for(let n of["pour","pipe"]){if(l.formulas[n]!==t)continue;let o=`/${n}/formula`,i=s=>String(b(s,o)??"").endsWith(jt(e))?M(s,o,t.file):s;ia(l.run,i),i(l.run.now)!==l.run.now&&bt(l.run,i(l.run.now))}}async function D$(t){t===l.run?(zn(),localStorage.removeItem("run"),h({view:"runs"})):t===l.mould?.open?be():pi(t)?nc(t):await gp(t),await Ke(),l.run.file&&et()}function Ap(){ne("edited",({file:t,before:e})=>{t===l.run?S$(e,t.now):Ps(t)||pi(t)?A$():t===l.mould?.open&&La(e)}),ne("gave_way",({file:t})=>{if(t===l.mould?.open)return La();t===l.run&&(ae(),Qe().then(et)),et()}),ne("left_deleted",({file:t})=>{D$(t)}),ne("unwritten",({file:t})=>{t===l.run?se():(Ps(t)||pi(t))&&et()}),ne("conflict",({file:t})=>{(Ps(t)||pi(t))&&h({is_old:!0})}),ne("renamed",({file:t})=>{t===l.run&&(localStorage.setItem("run",t.file),ae(),Qe()),et()}),ne("copied",({file:t,from:e})=>{Ps(t)&&P$(t,e),pi(t)&&rc(t,e),t===l.run&&(localStorage.setItem("run",t.file),Qn().then(et))})}var Ce=r`<span aria-hidden="true">⚠</span> Danger`;function mi(t,e="",n){let o=Ze(t,n);return o.length?r`<div class="dangers" id=${e||u}>
    ${o.map(i=>r`<p class="danger"><strong>${Ce}</strong> ${i}</p>`)}
  </div>`:u}function Ze(t,e){let n=t==="pour"?"pipe":"pour";return l.dangers[t==="apart"?"apart":"run"].filter(o=>!o.is_of_heat).filter(o=>t==="apart"||o.batter!==n).filter(o=>e===void 0||o.batch_pieces===void 0||o.batch_pieces===e).map(o=>o.text)}function Pp(){let t=ee(l.view)||ti()==="apart",e=l.dangers.run.map(({text:n})=>({from:t?`In the run "${String(l.run.now.name??l.run.file)}": `:"",text:n}));return[...l.dangers.apart.map(({text:n})=>({from:"",text:n})),...e]}var Dp=()=>Pp().length>0;function Mp(){let t=Pp(),e=F$();return!t.length&&!e?u:r`<section class="foremost" aria-label="Danger, and figures from before">
    ${t.length?r`<div role="alert" class="dangers">
            ${t.map(({from:n,text:o})=>r`<p class="danger"><strong>${Ce}</strong> ${n}${o}</p>`)}
          </div>`:u}
    ${e?r`<div class="stale">
            <p role="status"><strong>Figures from before.</strong> ${e}</p>
            ${M$()?r`<button type="button" @click=${O$}>To the question</button>`:u}
          </div>`:u}
  </section>`}var M$=()=>Fe(ti())!==void 0&&!ee(l.view);function O$(){let t=document.querySelector(".banner h2");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}),t.scrollIntoView({block:"start"}))}function F$(){if(!l.run.file||l.view==="reading")return"";let t=Fe(ti());return t&&Rn(t)?`${t.file} was deleted outside this page: what is struck through rests on no file. Save it again, or leave it deleted.`:t?`${t.file} was changed outside this page: what is struck through is of neither version. Choose which to keep.`:l.is_old&&l.changed_beside?`${l.changed_beside} was changed outside this page: what is struck through is not to be weighed.`:""}function ao(t){let{pieces:e,batches:n,batch_limits:o,around:i,...s}=t,[a]=n,{pour:d,pipe:c,dust:p,lye_pot:m,bottles:_}=a;return{...s,pour:d,pipe:c,dust:p,lye_pot:m,bottles:_,batch:a,place:"batches.0",whippings:c?.whippings??[],whole:t}}var ct=(t,e,n=`${e}s`)=>`${t} ${t===1?e:n}`,C$=t=>t.cut?["loaf","loaves"]:["cast","casts"];function we(t,{pieces:e,casts:n}){let o=t.cut?ct(e,"bar"):ct(e,"piece");return n===e?o:`${o} from ${ct(n,...C$(t))}`}var L$=t=>t===1?"once":`${t} times`,Wa=t=>t.batches.length>1,xt=t=>t.pieces.batches>1;function fi(t){return t.length<2?t.join(""):`${t.slice(0,-1).join(", ")} and ${t.at(-1)}`}function it(t){return xt(t.whole)?`one batch, ${we(t.whole,t.batch)}`:""}var Op=({whippings:t})=>t.length>1||(t[0]?.count??0)>1;function Ia(t,e){return Op(t)?`${we(t.whole,e)}${e.count>1?`, whipped ${L$(e.count)}`:""}`:""}function Ds(t,e){let n=Ia(t,e);return n&&`one whipping: ${n}`}var Fp=t=>xt(t.whole)||Op(t),Ms=(t,e)=>`${ct(t,"filling")} of ${ct(e,"cavity","cavities")}`;var Cp=F`<path class="wall" d="M30 10l8 52h44l8-52" />`,Ha={alkali:{name:"alkali",words:"Sodium hydroxide (NaOH) or potassium hydroxide (KOH), dry. Dissolved in water it is lye solution, which is another weight."},batch:{name:"batch",words:"What is mixed at once. A run that is too large for the pot is made in several."},batter:{name:"batter",words:"Fats and lye solution stirred together, until it sets."},cure:{name:"cure",words:"The weeks in which the soap dries and becomes milder. A cured piece weighs less than a fresh one."},embed:{name:"embed",words:"A piece of soap cast beforehand and buried in the base."},headspace:{name:"headspace",words:"The room left between the base and the brim. The topping may fill some of it.",drawing:F`<path class="shaded pour" d="M34 36l4 26h44l4-26z" />${Cp}<path class="pour-line" d="M20 36h80" />
      <path class="measure" d="M60 12v22m-4-4l4 4 4-4m-8-14l4-4 4 4" />`},kerf:{name:"kerf",words:"What the blade or wire turns to crumbs at each cut."},lye_solution:{name:"lye solution",words:"Alkali dissolved in water. Its weight is that of both together."},margin:{name:"margin",words:"What is left of the price after cost and fees, as a share of the price without tax."},markup:{name:"markup",words:"What is put on the cost, as a share of the cost. A markup of 100 % is a margin of 50 %."},overrun:{name:"overrun",words:"How much air whipping beats in: at 100 % the topping has twice the volume that it had before.",drawing:F`<path class="shaded pipe" d="M14 44h28v18h-28z" /><path class="shaded pipe" d="M72 26h28v36h-28z" />
      <path class="measure" d="M48 44h16m-5-5l5 5-5 5" /><path class="wall" d="M10 20v42h36v-42M68 20v42h36v-42" />`},purity:{name:"purity",words:"The share of the alkali that is alkali. The rest is mostly water that it drew from the air."},rejects:{name:"rejects",words:"Pieces that come out unfit to sell, as a share of all that are made."},scale_step:{name:"smallest step",words:"The least by which the scale's display can change, such as 1 g or 0.1 g."},superfat:{name:"superfat",words:"The share of the fats that is left without lye to turn it into soap, so that the soap is mild."},superfat_as_weighed:{name:"superfat as weighed",words:"The superfat that comes of the weights on this page, after rounding to what the scales show. Below 0 % there is lye left over, and the soap burns."},trace:{name:"trace",words:"The batter is thick enough that what drips from the whisk stays seen on it for a moment."},weigh_cup:{name:"weigh-cup",words:"A small cup of known volume, filled level with whipped topping and weighed without the cup. It shows how light the topping is today, and so how many pieces the bowl pipes.",drawing:F`<path class="shaded pipe" d="M30 10l8 52h44l8-52z" />${Cp}<path class="measure" d="M20 10h80" />`}};var ja=t=>`term ${t}`;function Le(t){return r`<button
    type="button"
    class="ask-term"
    aria-expanded=${l.open.has(ja(t))?"true":"false"}
    aria-label="What ${Ha[t].name} means"
    @click=${()=>Kt("open",ja(t))}
  >
    <span aria-hidden="true">?</span>
  </button>`}function le(t){if(!l.open.has(ja(t)))return u;let{name:e,words:n,drawing:o}=Ha[t];return r`<span class="term-words" role="note"
    >${o?r`<svg class="drawn" viewBox="0 0 120 72" aria-hidden="true">${o}</svg>`:u}<span
      ><b>${e}</b>: ${n}</span
    ></span
  >`}var Xe=t=>r`<span class="term">${Le(t)}${le(t)}</span>`;var Fs=28.349523125,Wp=25.4,E$=29.5735295625;function ye(t,e){return t.toFixed(e).replace(/^-(0(\.0*)?)$/,"$1")}function T(t,e){return B$(ye(t,e))}var B$=t=>t.replace(/(\.\d*?)0+$/,"$1").replace(/\.$/,"");function Yt(t){let e=[1,2,3].find(n=>Number(t.toFixed(n))!==0);return e!==void 0?`${ye(t,e)} %`:Na(t)?"just below 0 %":"0.0 %"}var Na=t=>t<0||Object.is(t,-0),Ip=t=>Math.abs(t-Math.round(t))<1e-6;function Lp(t){return t?[0,1,2,3].find(e=>Ip(t*10**e))??3:0}function Ep(t){return Math.max(0,Math.ceil(-Math.log10(t)-1e-9))}function W$(t){return[0,1,2].find(e=>t.every(n=>Ip(n*10**e)))??3}function Cs(t,e,n){return t==="metric"?[e,""]:t==="us"?[n,""]:[e,n]}function Tt(t,e){let n=s=>t[`${e}${s}`],o=n("scale_step_g"),i=n("g");return{g:i,scale_step_g:o??10**-W$([i]),g_text:n("g_text"),oz_text:n("oz_text"),reads:n("reads")}}var Hp=.001;function Os(t,e,n,o,i=1e-9){let s=10**n;return ye(o==="nearest"?t/e:Math.floor((t+i)/e*s)/s,n)}var Bp=[1,.5,.2,.1,.05,.02,.01,.005,.002,.001];function I$(t){if(!Bp.some(e=>Math.abs(e*10-t)<1e-9||Math.abs(e-t)<1e-9))return Bp.find(e=>Math.abs(e*Fs-t)<.6*Hp)}function st(t,e,n="nearest"){let o=e.scale_step_g||.1,i=I$(o),s=Math.min(.6*Hp,o/2),a=i?Os(e.g,1,Ep(o),n):Os(e.g,1,Lp(o),n,s),d=i?Os(e.g,Fs,Lp(i),n,s):Os(e.g,Fs,Ep(o/Fs),n),[c,p]=[`${e.g_text??a} g`,`${e.oz_text??d} oz`];return(e.reads?e.reads==="oz":i!==void 0)&&t==="both"?[p,c]:Cs(t,c,p)}var C=(t,e,n=1,o="nearest")=>st(t,{g:e,scale_step_g:10**-n},o);function wt(t,e,n=1){return Cs(t,`${ye(e,n)} ml`,`${ye(e/E$,2)} US fl oz`)}function _t(t,e){return Cs(t,`${T(e,1)} mm`,H$(e))}function H$(t){let e=Math.round(Math.abs(t)/Wp*32),n=t<0&&e?"-":"",o=e%32,i=32;for(;o&&o%2===0;)o/=2,i/=2;let s=Math.floor(e/32),a=o?`${o}/${i}`:"";return`${n}${[s||!o?String(s):"",a].filter(Boolean).join(" ")} in`}var qa=([t])=>t,S=([t,e])=>e?`${t} (${e})`:t;function jp(t,e){return Cs(t,`${ye(e,0)} \xB0C`,`${ye(e*1.8+32,0)} \xB0F`)}function lo(t){let e=/^\s*(?:(\d+)\s+)?(\d+(?:[.,]\d+)?)(?:\/(\d+))?\s*(mm|cm|m|in|inch|inches|")\s*$/.exec(String(t??""));if(!e)return;let n=Number(e[1]??0)+Number(e[2].replace(",","."))/Number(e[3]??1),o={mm:1,cm:10,m:1e3}[e[4]]??Wp;return n*o}function ve(t){return/^[+-]?[\d.,/\s½¼¾]+?\s*([^\d\s.,/].*)$/.exec(String(t??""))?.[1]?.trim()??""}var tn=t=>/^\s*[+-]?\d[\d.,/\s]*$/.test(t);function uo(t){let e=new Date(/^\d{4}-\d\d-\d\d$/.test(t)?`${t}T12:00`:t);return Number.isNaN(e.getTime())?t:e.toLocaleDateString("en-GB",{dateStyle:"medium"})}function en(t){let e=Math.round(t/60);return t>=60&&t%60===0&&e<90?`${e} min`:t<90?`${Math.round(t)} s`:e<90?`${e} min`:`${Math.floor(e/60)} h ${e%60} min`}var Np=t=>t.goes_into==="lye",qp=({role:t})=>t==="alkali",j$=t=>qp(t)?"down":"nearest",Dn=(t,e)=>st(t,e,j$(e));function Ls(t){let e=t.ingredients.map((i,s)=>({one:i,i:s})).filter(({one:i})=>Np(i)),n=({one:i})=>i.role==="water",o=({one:i})=>qp(i);return[...e.filter(n),...e.filter(i=>!n(i)&&!o(i)),...e.filter(o)]}function Up(t){return t.ingredients.map((e,n)=>({one:e,i:n})).filter(({one:e})=>!Np(e))}function co(t,e=()=>{}){if(!t.theirs)return u;let n=Rn(t),o=`conflict-${t.file.replaceAll(/[^\w]/g,"-")}`,i=()=>{qd(t),e()};return r`<section class="banner" aria-labelledby=${o}>
    <h2 id=${o}>${t.file} was ${n?"deleted":"changed outside this page"}</h2>
    <p>
      ${n?"Another program or browser tab deleted it. What stands on this page can be saved again, or be forgotten with it.":"Another program or browser tab saved it. Which version do you want to keep?"}
    </p>
    ${t.failed?r`<p class="complaint" role="status">Not loaded: ${t.failed}.</p>`:u}
    <div class="choice">
      ${n?r`<button type="button" @click=${i}>Save it again</button>
              <button type="button" @click=${()=>Ud(t)}>Leave it deleted</button>`:r`<button type="button" @click=${()=>Nd(t)}>Load the saved file</button>
              <button type="button" @click=${i}>Overwrite it with this page</button>`}
    </div>
  </section>`}function po(t){if(t.theirs||!t.set_aside||hs(t)&&!t.is_taken)return u;let e=()=>{hs(t)&&Je(),zd(t)};return r`<section class="banner quiet" aria-label="${t.file} was changed">
    <p>
      ${t.file} was changed outside this page, and stands here as it is
      now.${t.is_taken?"":" What you typed is still here."}
    </p>
    <div class="choice">
      <button type="button" @click=${e}>Change to the other text</button>
      ${t.is_taken?r`<button type="button" @click=${()=>Hd(t)}>Close</button>`:u}
    </div>
  </section>`}var Ee={ATTRIBUTE:1,CHILD:2,PROPERTY:3,BOOLEAN_ATTRIBUTE:4,EVENT:5,ELEMENT:6},Es=t=>(...e)=>({_$litDirective$:t,values:e}),mo=class{constructor(e){}get _$AU(){return this._$AM._$AU}_$AT(e,n,o){this._$Ct=e,this._$AM=n,this._$Ci=o}_$AS(e,n){return this.update(e,n)}update(e,n){return this.render(...n)}};var{I:N$}=yd,zp=t=>t;var Vp=t=>t.strings===void 0,Jp=()=>document.createComment(""),fo=(t,e,n)=>{let o=t._$AA.parentNode,i=e===void 0?t._$AB:e._$AA;if(n===void 0){let s=o.insertBefore(Jp(),i),a=o.insertBefore(Jp(),i);n=new N$(s,a,t,t.options)}else{let s=n._$AB.nextSibling,a=n._$AM,d=a!==t;if(d){let c;n._$AQ?.(t),n._$AM=t,n._$AP!==void 0&&(c=t._$AU)!==a._$AU&&n._$AP(c)}if(s!==i||d){let c=n._$AA;for(;c!==s;){let p=zp(c).nextSibling;zp(o).insertBefore(c,i),c=p}}}return n},nn=(t,e,n=t)=>(t._$AI(e,n),t),q$={},Bs=(t,e=q$)=>t._$AH=e,Kp=t=>t._$AH,Ws=t=>{t._$AR(),t._$AA.remove()};var j=Es(class extends mo{constructor(t){if(super(t),t.type!==Ee.PROPERTY&&t.type!==Ee.ATTRIBUTE&&t.type!==Ee.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!Vp(t))throw Error("`live` bindings can only contain a single expression")}render(t){return t}update(t,[e]){if(e===Mt||e===u)return e;let n=t.element,o=t.name;if(t.type===Ee.PROPERTY){if(e===n[o])return Mt}else if(t.type===Ee.BOOLEAN_ATTRIBUTE){if(!!e===n.hasAttribute(o))return Mt}else if(t.type===Ee.ATTRIBUTE&&n.getAttribute(o)===e+"")return Mt;return Bs(t),e}});var Mn,hi=[],On=()=>Mn!==void 0;function qt(t,e,n,o){if(!Mn||Mn.some(s=>s.id===n))return;let i=hi.flatMap(({part:s})=>s??[]);Mn.push({of:t,at:e,id:n,label:o,part:i.at(-1)??"",folds:hi.flatMap(({fold:s})=>s??[])})}function Zt(t,e){hi.push(t);try{return e()}finally{hi.pop()}}var Qp=()=>{},Gp=t=>{Qp=t},Is,U$=()=>[l.run.now,...Object.values(l.formulas).map(t=>t.now),...Object.values(l.beside).map(t=>t.now),l.formulas.apart,l.plan,l.fats,l.files];function ho(){if(On())return[];let t=U$();return Is?.of.length===t.length&&t.every((n,o)=>n===Is.of[o])||(Is={of:t,wanted:z$()}),Is.wanted}function z$(){Mn=[],hi=[];try{return Qp(),Mn}finally{Mn=void 0}}function Yp(t){l.touched.has(t)||h({touched:new Set(l.touched).add(t)})}function Zp(t,e){if(l.has_asked)return!1;let n=ho().filter(o=>o.of===t&&(o.at===e||o.at.startsWith(`${e}/`)));return n.length>0&&n.every(o=>!l.touched.has(o.id))}var X=(t,e)=>`f-${t}${e.replaceAll(/[^\w]/g,"-")}`;function Hs(){return l.complaint??(l.quoted?.of===l.plan?l.quoted?.complaint:void 0)}function Et(t,e){let n=Hs();if(!(!n||n.field!==e&&!n.field.startsWith(`${e}/`)))return ke(t)&&!Zp(t,n.field)?K(n):void 0}function Rt(t,e){return Hs()?.field===e?Et(t,e):void 0}function ke(t){let e=Hs(),n=Kn(t)?.file;return!e||n===void 0?!1:e.file===""||e.file===n||e.file.endsWith(`/${n}`)}function J$(t,e){let n=e.slice(0,e.lastIndexOf("/"));return Object.keys(g(t,n)??{}).length>1?e:n}function Fn(){let t=Hs();if(t)for(let e of["run",...at,...kt])for(let n=t.field;n;n=n.slice(0,n.lastIndexOf("/"))){let o=Et(e,n)&&document.getElementById(X(e,n));if(o)return o}}function V$(t,e){let n=t.of??"run";if(t.optional&&e.trim()==="")return;if(t.number)return/^\s*\d+([.,]\d+)?\s*$/.test(e)?Number(e.trim().replace(",",".")):e;if(t.count)return/^\s*\d{1,9}\s*$/.test(e)?Number(e):e;let o=K$(t,n);return o&&tn(e)?`${e.trim()} ${o}`:e}function K$(t,e){return ve(g(e,t.at))||t.unit||""}var Pt=(t,e,n)=>e||n?r`<p id="${t}-said" class=${e?"complaint":"hint"}>${e??n}</p>`:u,Ua=!1;addEventListener("pointerdown",()=>Ua=!0,!0);for(let t of["pointerup","pointercancel"])addEventListener(t,()=>Ua=!1,!0);var Q$=()=>h({typed:void 0});function za(t){let{id:e}=t.target,n=()=>{Q$(),Yp(e)};Ua?addEventListener("pointerup",()=>setTimeout(n),{once:!0}):n()}var G$=t=>typeof t=="string"&&t.startsWith("?")?t.slice(1).trim():void 0,Y$=({unit:t="",told:e=""},n)=>[t.replace("cm2","cm\xB2"),e,n?"required":""].filter(Boolean).join(", ")||u;function f(t){let e=t.of??"run",n=X(e,t.at),o=g(e,t.at),i=G$(o),s=l.typed?.key===n,a=s?l.typed.text:o===void 0||i!==void 0?"":String(o),d=i!==void 0||a.trim()===""&&(!t.optional||t.is_due===!0);d&&qt(e,t.at,n,t.label);let c=Et(e,t.at),p=$=>{let w=$.target.value;h({typed:{key:n,text:w}});let R=V$(t,w);N(e,R===void 0&&t.takes_part?J$(e,t.at):t.at,R)},_=(s&&typeof o=="string"&&o!==a?`taken as ${o}`:"")||t.hint||i;return r`<div
    class="field ${t.wide?"wide":""} ${t.short?"short":""} ${c?"wants":""}"
  >
    ${Ja(r`<label for=${n} data-said=${Y$(t,d)}>${t.label}</label>`,t.term)}
    <input
      id=${n}
      aria-required=${t.optional&&!t.is_due?u:"true"}
      .value=${j(a)}
      @input=${p}
      @blur=${za}
      autocomplete="off"
      spellcheck="false"
      inputmode=${t.count?"numeric":t.number?"decimal":"text"}
      aria-invalid=${c?"true":"false"}
      aria-describedby=${[c||_?`${n}-said`:"",t.described_by??""].filter(Boolean).join(" ")||u}
    />
    ${Pt(n,c,_)} ${t.term?le(t.term):u}
  </div>`}var Ja=(t,e)=>e?r`<div class="labelled">${t}${Le(e)}</div>`:t;function go(t){for(let e=t?.closest("details");e;e=e.parentElement?.closest("details"))e.open=!0;t?.focus()}var I=t=>()=>document.getElementById(t),nt=(t,e)=>I(X(t,e)),sn=t=>()=>document.querySelector(`#${t} :is(input, select, button[aria-pressed])`),Z$=()=>document.activeElement;function G(t){requestAnimationFrame(()=>go(t()))}function rn(t,e,n,o=Z$){E(e),tc(t,n),G(o)}function L(t,e,n,o,i){rn(t,e,s=>M(s,n,o),i)}var on=(t,e,n)=>`${X(t,e)}-${n}`;function H(t,e){let n=Rt(t,e);return n?r`<p id=${X(t,e)} class="complaint" tabindex="-1">${n}</p>`:u}var Xp=(t,e,n)=>e.map(([o,i])=>r`<button type="button" aria-pressed=${o===t?"true":"false"} @click=${()=>n(o)}>
        ${i}
      </button>`);function rt(t,e,n,o){return r`<div class="choice" role="group" aria-label=${t}>${Xp(e,n,o)}</div>`}function k({of:t="run",question:e,at:n,asked_at:o=n,is_told_elsewhere:i,chosen:s,answers:a,puts:d,then:c,hint:p,optional:m,term:_}){let $=i?on(t,n,e.replaceAll(/\W+/g,"-")):X(t,o),w=s===void 0&&!m;w&&qt(t,o,$,e);let R=i?void 0:Rt(t,o),Y=Ht=>{if(Ht===s)return;let _n=a.find(([n_])=>n_===Ht)[1];L(t,`${e}: ${_n}`,n,d(Ht),c&&nt(t,c(Ht)))};return r`<div class="field asked ${R?"wants":""}">
    ${Ja(r`<p class="question" id="${$}-label" data-said=${w?"required":u}>${e}</p>`,_)}
    <div
      class="choice"
      role="group"
      id=${$}
      tabindex="-1"
      aria-labelledby="${$}-label"
      aria-describedby=${R||p?`${$}-said`:u}
    >
      ${Xp(s,a,Y)}
    </div>
    ${Pt($,R,p)} ${_?le(_):u}
  </div>`}function Va(t,e,n,o){let i=X("run",t),s=Rt("run",t),a=()=>L("run",`${e}: ${n?"no":"yes"}`,t,n?void 0:o);return r`<div class="choice">
      <button
        type="button"
        id=${i}
        aria-pressed=${n?"true":"false"}
        aria-describedby=${s?`${i}-said`:u}
        @click=${a}
      >
        ${e}
      </button>
    </div>
    ${Pt(i,s)}`}function yt({label:t,of:e="run",at:n,answers:o,unsaid:i,optional:s,chosen:a,take:d}){let c=X(e,n),p=Et(e,n),m=a??D(e,n);!m&&!s&&qt(e,n,c,t);let _=!m||o.some(([R])=>R===m),$=[["",i],..._?[]:[[m,m]],...o];return r`<div class="field choose ${p?"wants":""}">
    <label for=${c} data-said=${m||s?u:"required"}>${t}</label>
    <select
      id=${c}
      aria-required=${s?u:"true"}
      @change=${R=>{let Y=R.target.value;d?d(Y):N(e,n,Y||!s?Y:void 0)}}
      aria-invalid=${p?"true":"false"}
      aria-describedby=${p?`${c}-said`:u}
    >
      ${$.filter(([R])=>R||s||!m).map(([R,Y])=>r`<option value=${R} .selected=${j(R===m)}>${Y}</option>`)}</select
    >${Pt(c,p)}
  </div>`}function _o(t,e,n=[]){let o=Lt(D("run",e),n);return yt({label:t,at:e,chosen:o,answers:n.map(i=>[i.file,i.name||i.file]),unsaid:"choose ..."})}function ue({of:t="run",at:e,name:n,title:o,add:i,blank:s,body:a}){let d=on(t,e,"part"),c=on(t,e,"add"),p=()=>Zt({part:o},a);return g(t,e)===void 0?r`<p class="choice">
      <button type="button" id=${c} @click=${()=>L(t,`${o} added`,e,s,sn(d))}>
        ${i}
      </button>
    </p>`:r`<div class="part" id=${d} role="group" aria-label=${o}>
    <div class="part-head">
      <p class="part-title">${o}</p>
      <button
        type="button"
        aria-label="Remove ${n}"
        @click=${()=>L(t,`${o} removed`,e,void 0,I(c))}
      >
        Remove
      </button>
    </div>
    ${H(t,e)} ${p()}
  </div>`}var tm=(t,e)=>`folded ${t} ${e}`,de=(t,e)=>lt(tm(t,e));function P({of:t="run",name:e,pointers:n,summary:o,is_needed:i,body:s}){let a=tm(t,e);if(On())return r`${Zt({fold:a},s)}`;(i||n.some(p=>Et(t,p)))&&lt(a);let d=l.open.has(a);return r`<details .open=${d}>
    <summary @click=${p=>{p.preventDefault(),Kt("open",a)}}>${o}</summary>
    ${d?r`<div class="folded">${s()}</div>`:u}
  </details>`}var x=({of:t="run",at:e})=>ft(t,e),B=({of:t="run",at:e},n)=>on(t,`${e}/${n}`,"item"),js=({of:t="run",at:e},n,o)=>on(t,`${e}/${n}`,o),X$=({of:t="run",at:e})=>X(t,e);function gi(t,e,n,o){let{of:i="run",at:s,stays:a,and:d=c=>c}=t;rn(i,e,c=>d(M(c,s,n.length||a?n:void 0),n.length),o)}function q(t,e,n){let o=x(t);gi(t,`${n} added`,[...o,e],sn(B(t,o.length)))}function tb(t,e,n){let o=x(t).filter((a,d)=>d!==e),i=Math.min(e,o.length-1),s=o.length>(t.least??0);gi(t,`${n} removed`,o,s?I(js(t,i,"drop")):nt(t.of??"run",t.at))}function eb(t,e,n,o){let i=[...x(t)],[s]=i.splice(e,1);i.splice(e+n,0,s);let a=n<0?"earlier":"later",c=e+n===0||e+n===i.length-1?n<0?"later":"earlier":a;gi(t,`${o} moved ${a}`,i,I(js(t,e+n,c)))}function z(t,e,n){let o=x(t).length-1,i=o>=(t.least??0),s=t.in_order&&o>0;if(!i&&!s)return u;let a=(d,c,p)=>r`<button
      type="button"
      id=${js(t,e,c)}
      ?disabled=${p}
      aria-label="${n} ${c}"
      @click=${()=>eb(t,e,d,n)}
    >
      ${d<0?"\u2191":"\u2193"}
    </button>`;return r`<div class="tools">
    ${s?r`${a(-1,"earlier",e===0)} ${a(1,"later",e===o)}`:u}
    ${i?r`<button
            type="button"
            id=${js(t,e,"drop")}
            aria-label="Remove ${n}"
            @click=${()=>tb(t,e,n)}
          >
            ×
          </button>`:u}
  </div>`}function J(t,e,n){let o=X$(t),i=Rt(t.of??"run",t.at);return r`${Pt(o,i)}
    <button type="button" id=${o} aria-describedby=${i?`${o}-said`:u} @click=${n}>
      ${e}
    </button>`}function Ka(t){let e=D(t,"/measured_density");return r`<section class="card" aria-labelledby="pouring-title">
    <h2 id="pouring-title">Pouring and curing</h2>
    <div class="row">
      ${f({label:"Temperature at the pour",of:t,at:"/pour_temperature",hint:"The batter's, with its unit: 38 \xB0C, 100 \xB0F.",term:"batter"})}
      ${f({label:"Cure",of:t,at:"/cure",unit:"days",optional:!0,hint:"Such as 35 days.",term:"cure"})}
    </div>
    ${sb(t)}
    ${P({of:t,name:"density",pointers:["/measured_density"],summary:`Measured density${e&&`: ${e}`}`,body:()=>f({label:"Of the plain, unwhipped batter, by weigh-cup",of:t,at:"/measured_density",unit:"g/ml",optional:!0,hint:"Taken in place of the computed one, and compared with it."})})}
  </section>`}var nb=[["unsaid","Not given"],["share","As a share"],["law","As a course in time"],["weighed","From my weighings"]],em={after:"",mass:""},nm=3,ob={unsaid:{},share:{water_lost_in_cure:""},law:{drying:{water_lost_in_the_end:"",time_to_63_percent:""}},weighed:{drying:{weighings:Array.from({length:nm},()=>em)}}};function ib(t){return g(t,"/drying/weighings")!==void 0?"weighed":g(t,"/drying")!==void 0?"law":g(t,"/water_lost_in_cure")===void 0?"unsaid":"share"}function sb(t){let e=ib(t);return r`${k({of:t,question:"Water that leaves in the cure",at:"",asked_at:"/drying",chosen:e,answers:nb,puts:o=>({...ot(t,"",["drying","water_lost_in_cure"]),...ob[o]})})}
  ${e==="share"?r`<div class="row">
          ${f({label:"Of the batter's water, gone when it is sold",of:t,at:"/water_lost_in_cure",unit:"%"})}
        </div>`:u}
  ${e==="law"?r`<div class="row">
          ${f({label:"Of the batter's water, gone in the end",of:t,at:"/drying/water_lost_in_the_end",unit:"%"})}
          ${f({label:"After this, 63 % of that is gone",of:t,at:"/drying/time_to_63_percent",unit:"days"})}
        </div>`:u}
  ${e==="weighed"?rb(t):u}`}function rb(t){let e={of:t,at:"/drying/weighings",least:nm};return r`<p class="hint">Of one plain piece, or of the same few together, in order of time.</p>
    ${x(e).map((n,o)=>r`<div class="row named" id=${B(e,o)}>
          ${f({label:"Time since the pour",of:t,at:`${e.at}/${o}/after`,unit:"days",short:!0})}
          ${f({label:"Mass",of:t,at:`${e.at}/${o}/mass`,unit:"g",short:!0})}
          ${z(e,o,`weighing ${o+1}`)}
        </div>`)}
    ${J(e,"One more weighing",()=>q(e,em,"weighing"))}`}var ab=["citric acid, anhydrous","citric acid monohydrate","lactic acid (100 %)","acetic acid (100 %)","ascorbic acid","malic acid","tartaric acid","potassium hydrogen tartrate","oxalic acid, anhydrous","oxalic acid dihydrate","glycolic acid (100 %)","salicylic acid","benzoic acid","phosphoric acid (100 %)","vinegar, 5 g acetic acid per 100 g","lactic acid 88 % (of which part is lactate ester, titrated as total acid)","sodium bicarbonate","potassium bicarbonate"],Ns=t=>Ge(t).map(e=>[e.id,e.name]),om=["unsaid","Not given"],im=["none","Holds none"],sm=t=>t===void 0?"unsaid":t==="none"?"none":"some",lb=t=>e=>e==="some"?t:e==="none"?"none":void 0;function rm(t,e){return Qa(t,`${e}/contains_fat`,[om,im,["some","Holds fat"]],Ns(t))}function Qa(t,e,n,o){let i=sm(g(t,e)),s=n.some(([a])=>a===i)?i:void 0;return r`${k({of:t,question:"Fat in it",at:e,chosen:s,answers:n,puts:lb({fat:"",share:""})})}
  ${i==="some"?r`<div class="row">
          ${yt({label:"Which fat",of:t,at:`${e}/fat`,answers:o,unsaid:"choose ..."})}
          ${f({label:"Fat in what is weighed",of:t,at:`${e}/share`,unit:"%",short:!0})}
        </div>`:u}`}var ub=[om,im,["some","Holds acid"],["typed","By what it takes up"]],db={unsaid:void 0,none:"none",some:{acid:"",share:""},typed:{takes_up:""}};function Ga(t,e){let n=`${e}/contains_acid`,o=g(t,`${n}/takes_up`)!==void 0?"typed":sm(g(t,n));return r`${k({of:t,question:"Acid in it",at:n,chosen:o,answers:ub,puts:i=>db[i]})}
  ${o==="some"?r`<div class="row">
          ${yt({label:"Which acid",of:t,at:`${n}/acid`,answers:ab.map(i=>[i,i]),unsaid:"choose ..."})}
          ${f({label:"Of that acid in what is weighed",of:t,at:`${n}/share`,unit:"%",short:!0})}
        </div>`:u}
  ${o==="typed"?r`<div class="row">
          ${f({label:"Taken up by 1 g of it",of:t,at:`${n}/takes_up`,unit:"mg KOH/g",hint:"From its supplier's document."})}
        </div>`:u}
  ${o==="some"||o==="typed"?Ya(t,`${n}/confirmed`,"An essence or concentrate, stronger than a juice, vinegar, wine or sour milk"):u}`}function Ya(t,e,n){let o=g(t,e)===!0?"yes":"no";return k({of:t,question:n,at:e,chosen:o,answers:[["no","No"],["yes","Yes"]],puts:i=>i==="yes"?!0:void 0})}var lm={kind:"",inci:"",inci_sodium_soap:"",saponification_value:{low:"",high:""},source:""};function um(t,e){let n=li(t);if(!Array.isArray(n)||!n.some(d=>d.id===e))return u;let i=ft("own_fats","/fats").findIndex(d=>d.id===e);if(!(i>=0&&l.beside.own_fats!==void 0))return r`<button type="button" @click=${()=>{cb(t,e)}}>Change this fat of my own</button>`;let a=`/fats/${i}`;return P({of:"own_fats",name:e,pointers:[a],summary:`My own fat, in ${l.beside.own_fats.file}`,body:()=>Zt({part:D("own_fats",`${a}/name`)||"Your own fat"},()=>mb(a))})}async function cb(t,e){await gs(t),de("own_fats",e);let n=ft("own_fats","/fats").findIndex(o=>o.id===e);G(I(`f-own_fats-fats-${n}-name`))}var pb=[["triglyceride","Oil, fat or butter"],["wax_ester","Wax"],["free_fatty_acid","Fatty acid"]];function mb(t){let e=(n,o,i,s=!1)=>f({of:"own_fats",label:o,at:`${t}/${n}`,hint:i,optional:s});return r`${H("own_fats",t)}
    <p class="hint">All of it stands in the supplier's document. Every formula that names this file knows the fat.</p>
    <div class="row">
      ${e("name","Name of the fat")} ${e("source","The document","Supplier, name, date.")}
      ${e("lot","Lot",void 0,!0)}
    </div>
    ${k({of:"own_fats",question:"What it is",at:`${t}/kind`,chosen:D("own_fats",`${t}/kind`)||void 0,answers:pb,puts:n=>n,hint:"Jojoba is a wax; beeswax and lanolin are waxes too."})}
    ${fb(`${t}/saponification_value`)}
    <div class="row">
      ${e("inci","INCI name")}
      ${e("inci_sodium_soap","INCI name of its sodium soap","Such as Sodium Olivate.")}
      ${e("inci_potassium_soap","INCI name of its potassium soap","Left out, it is formed from the other.",!0)}
    </div>
    ${P({of:"own_fats",name:`${t} more`,pointers:["iodine_value","density","melting_range","unsaponifiable","fatty_acids","note"].map(n=>`${t}/${n}`),summary:"Iodine value, density, fatty acids",body:()=>hb(t)})}`}function fb(t){let e=g("own_fats",t),n=e!==null&&typeof e=="object"?"range":"one",o=(i,s,a=!1)=>f({of:"own_fats",label:s,at:i,number:!0,short:!0,optional:a,unit:"mg KOH/g"});return r`${k({of:"own_fats",question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657), never of NaOH",at:t,is_told_elsewhere:!0,chosen:n,answers:[["range","Lowest and highest"],["one","One value"]],puts:i=>i==="one"?"":{low:"",high:""}})}
    <div class="row">
      ${n==="one"?o(t,"Saponification value"):r`${o(`${t}/low`,"Lowest")} ${o(`${t}/typical`,"Typical",!0)}
            ${o(`${t}/high`,"Highest")}`}
    </div>`}function hb(t){let e=(o,i,s,a)=>{let d=`${t}/${o}`,c=g("own_fats",d)!==void 0,p=()=>L("own_fats",`${i}: ${c?"left out":"added"}`,d,c?void 0:s);return r`<div class="part" role="group" aria-label=${i}>
      <div class="part-head">
        <p class="part-title">${i}</p>
        <button type="button" aria-label="${c?"Leave out":"Add"} ${i.toLowerCase()}" @click=${p}>
          ${c?"Leave out":"Add"}
        </button>
      </div>
      ${c?r`${H("own_fats",d)}${a()}`:u}
    </div>`},n=(o,i,s,a=!1)=>f({of:"own_fats",label:i,at:`${t}/${o}`,unit:s,number:a,short:!0});return r`<div class="items">
      ${e("iodine_value","Iodine value",{low:"",high:""},()=>typeof g("own_fats",`${t}/iodine_value`)=="object"?r`<div class="row">
              ${n("iodine_value/low","Lowest iodine value","g/100 g",!0)}
              ${n("iodine_value/high","Highest iodine value","g/100 g",!0)}
            </div>`:n("iodine_value","Iodine value","g/100 g",!0))}
      ${e("density","Density when molten",{at:"",low:"",high:""},()=>r`<div class="row">
            ${n("density/at","Measured at","\xB0C")} ${n("density/low","Lowest density","g/ml")}
            ${n("density/high","Highest density","g/ml")}
          </div>`)}
      ${e("melting_range","Melting range",{low:"",high:""},()=>r`<div class="row">
            ${n("melting_range/low","Melts from","\xB0C")} ${n("melting_range/high","Melts up to","\xB0C")}
          </div>`)}
    </div>
    ${gb(`${t}/fatty_acids`)}
    <div class="row">
      ${f({of:"own_fats",label:"Unsaponifiable, at most",at:`${t}/unsaponifiable`,unit:"%",optional:!0,short:!0})}
      ${f({of:"own_fats",label:"Note on the fat",at:`${t}/note`,optional:!0})}
    </div>`}var am=[["C8:0","Caprylic, C8:0"],["C10:0","Capric, C10:0"],["C12:0","Lauric, C12:0"],["C14:0","Myristic, C14:0"],["C16:0","Palmitic, C16:0"],["C16:1","Palmitoleic, C16:1"],["C18:0","Stearic, C18:0"],["C18:1","Oleic, C18:1"],["C18:2","Linoleic, C18:2"],["C18:3","Linolenic, C18:3"],["C20:0","Arachidic, C20:0"],["C20:1","Gondoic, C20:1"],["C22:0","Behenic, C22:0"],["C22:1","Erucic, C22:1"]];function gb(t){let e=Object.keys(g("own_fats",t)??{}),n=am.filter(([a])=>!e.includes(a)),o=a=>am.find(([d])=>d===a)?.[1]??a,i=a=>`${t}/${U(a)}`,s=a=>{let d=Array.isArray(g("own_fats",i(a))),c=(p,m)=>f({of:"own_fats",label:`${o(a)}, ${m}`,at:`${i(a)}/${p}`,unit:"%",short:!0});return r`<div class="row">
      ${d?r`${c(0,"lowest")} ${c(1,"highest")}`:f({of:"own_fats",label:o(a),at:i(a),unit:"%",short:!0})}
      <button
        type="button"
        aria-label="Remove ${o(a)}"
        @click=${()=>L("own_fats",`${o(a)} removed`,e.length>1?i(a):t,void 0)}
      >
        ×
      </button>
    </div>`};return r`<p class="question">
      Fatty acids, as the document lists them: the saponification value is checked against them
    </p>
    ${H("own_fats",t)} ${e.map(s)}
    <div class="row">
      ${yt({label:"Add a fatty acid",of:"own_fats",at:`${t}/`,answers:n,unsaid:"choose ...",optional:!0,chosen:"",take:a=>a&&L("own_fats",`${o(a)} added`,i(a),["",""])})}
    </div>`}var _b=["tsp/lb","tbsp/lb","tsp/kg"],qs=["%","g/kg",..._b].flatMap(t=>[`${t} of fats`,`${t} of batter`]),cm=[...qs,"% of finished soap","g/kg of finished soap"];function dm(t,e){let n=t.trim().replaceAll(/\s+/g," "),o=[...e].sort((i,s)=>s.length-i.length).find(i=>n.endsWith(i))??"";return[o?n.slice(0,-o.length).trim():t,o]}function Us(t,e,n,o,i=!1){let s=X(t,e),[a,d]=dm(D(t,e),o),c=l.typed?.key===s?l.typed.text:a;!i&&!(a.trim()&&d)&&qt(t,e,s,a.trim()?`${n}: of what`:n);let m=Et(t,e),_=(w,R)=>{let Y=`${w.trim()} ${R}`.trim();N(t,e,i&&!w.trim()?void 0:Y),Q()},$=w=>{let R=w.target.value,[Y,Ht]=dm(R,o);h({typed:{key:s,text:R}}),_(Y,Ht||d)};return r`<div class="field rate ${m?"wants":""}">
    <label for=${s}>${n}</label>
    <div class="rate-of">
      <input
        id=${s}
        .value=${j(c)}
        @input=${$}
        @blur=${za}
        inputmode="text"
        autocomplete="off"
        spellcheck="false"
        aria-invalid=${m?"true":"false"}
        aria-describedby=${m?`${s}-said`:u}
      />
      <select
        aria-label="${n}: of what"
        @change=${w=>_(c,w.target.value)}
      >
        <option value="" .selected=${j(d==="")}>of what?</option>
        ${o.map(w=>r`<option value=${w} .selected=${j(w===d)}>${w}</option>`)}
      </select>
    </div>
    ${Pt(s,m)}
  </div>`}function $b(t){let e=t.map(i=>/^\s*(\d+(?:[.,]\d+)?)\s*%\s*$/.exec(String(i??""))?.[1]),n=e.filter(i=>i!==void 0).map(i=>Number(i.replace(",","."))),o=n.reduce((i,s)=>i+s,0);return{sum:Math.round(o*1e6)/1e6,unread:e.length-n.length}}var bb=.01+1e-9;function zs(t,e){let{sum:n,unread:o}=$b(e),i=a=>`${String(Math.round(a*1e6)/1e6)} %`;if(o===e.length)return`${t} have no share yet.`;if(o)return`${t} add to ${i(n)} so far; ${o===1?"one has no share that can be added":`${o} have no share that can be added`}.`;let s=100-n;return Math.abs(s)<=bb?`${t} add to ${i(n)}.`:s>0?`${t} add to ${i(n)}: ${i(s)} ${s===1?"is":"are"} missing.`:`${t} add to ${i(n)}: ${i(-s)} too much.`}var pm=(t,e)=>Ge(t).find(n=>n.id===e)?.name??e,_i=t=>({of:t,at:"/fats",in_order:!0,stays:!0}),Js=t=>x(_i(t));function tl(t){let e=Js(t),n=l.picking?.of===t&&l.picking.row===e.length;return r`<section class="card" aria-labelledby="fats-title">
    <h2 id="fats-title">Fats</h2>
    <ol class="formula-rows">
      ${e.map((o,i)=>wb(t,i,e))}
    </ol>
    <p class="total" role="status">
      ${e.length?zs("The fats",e.map(o=>o.share)):"No fat yet."}
    </p>
    ${e.length?u:qt(t,"/fats",X(t,"/fats"),"The fats")}
    ${n?fm(t):J(_i(t),"Add a fat",()=>mm(t,e.length))} ${Pb(t)}
  </section>`}function wb(t,e,n){let o=`/fats/${e}`,i=pm(t,String(n[e].fat??""))||"Which fat?",s=Rt(t,`${o}/fat`)??Rt(t,o),a=l.picking?.of===t&&l.picking.row===e;return r`<li class="formula-row" id=${B(_i(t),e)}>
    <div class="fat-line">
      <button
        type="button"
        class="fat-name"
        id=${X(t,`${o}/fat`)}
        aria-expanded=${a?"true":"false"}
        aria-label="${i}: choose another fat"
        @click=${()=>a?Za():mm(t,e)}
      >
        ${i}
      </button>
      ${f({label:"Share",of:t,at:`${o}/share`,unit:"%",short:!0})} ${z(_i(t),e,i)}
    </div>
    ${s?r`<p class="complaint">${s}</p>`:u} ${a?fm(t):u}
    ${um(t,String(n[e].fat??""))}
    ${P({of:t,name:o,pointers:[`${o}/saponification_value`,`${o}/confirmed`,`${o}/lot`],summary:`Your lot${xb(n[e])}`,body:()=>Sb(t,e)})}
  </li>`}function mm(t,e){h({picking:{of:t,row:e,text:""}}),G(I("find-fat")),requestAnimationFrame(()=>document.querySelector(".picker")?.scrollIntoView({block:"start"}))}function Za(){let t=l.picking;h({picking:void 0}),t&&G(nt(t.of,t.row<Js(t.of).length?`/fats/${t.row}/fat`:"/fats"))}function Xa(t,e){let{row:n}=l.picking,o=Js(t);h({picking:void 0});let i=o[n]?{fat:e,share:o[n].share??""}:{fat:e,share:""};gi(_i(t),`${pm(t,e)} chosen`,[...o.slice(0,n),i,...o.slice(n+1)],nt(t,`/fats/${n}/share`))}var Bt=t=>t.normalize("NFD").replace(/\p{M}/gu,"").toLowerCase();function $i(t,e){let n=Bt(e).split(/\s+/).filter(Boolean),o=i=>n.every(s=>Bt(i).includes(s));return o(`${t.name} ${t.id.replaceAll("_"," ")}`)?t.name:"own"in t?void 0:[...t.also_called,t.inci].find(o)}function fm(t){let{row:e,text:n}=l.picking,o=Js(t).map(m=>m.fat),i=yb(t,n),s=i.filter(m=>!o.includes(m.id)||o[e]===m.id),a=s.find(m=>m.id===l.picking.lit),d=m=>{h({picking:{of:t,row:e,text:m.target.value}})},c=m=>{let _=a?s.indexOf(a)+m:m>0?0:s.length-1,$=s[(_+s.length)%s.length];$&&(h({picking:{of:t,row:e,text:n,lit:$.id}}),requestAnimationFrame(()=>document.getElementById(`fat-${$.id}`)?.scrollIntoView({block:"nearest"})))},p=m=>{m.key==="Escape"&&Za(),(m.key==="ArrowDown"||m.key==="ArrowUp")&&(m.preventDefault(),c(m.key==="ArrowDown"?1:-1));let _=s.find(w=>Bt(w.name)===Bt(n.trim())),$=a??(s.length===1?s[0]:_);m.key==="Enter"&&$&&Xa(t,$.id)};return r`<div class="picker" role="group" aria-label="Which fat?">
    <div class="row">
      <div class="field">
        <label for="find-fat">Find a fat by its name</label>
        <input
          id="find-fat"
          role="combobox"
          aria-expanded="true"
          aria-controls="fats-found"
          aria-activedescendant=${a?`fat-${a.id}`:u}
          .value=${n}
          @input=${d}
          @keydown=${p}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      <button type="button" @click=${Za}>Close the list</button>
    </div>
    <p class="hint" role="status">
      ${i.length?`${i.length===1?"One fat: Enter takes it":`${i.length} fats: the arrow keys choose, Enter takes`}.`:"No fat of that name."}
    </p>
    <div class="choice" id="fats-found" role="listbox" aria-label="Fats found">
      ${i.map(m=>{let _=o.includes(m.id)&&o[e]!==m.id,$=$i(m,n);return r`<button
          type="button"
          role="option"
          id="fat-${m.id}"
          class=${m===a?"lit":""}
          ?disabled=${_}
          aria-selected=${m===a||o[e]===m.id?"true":"false"}
          @click=${()=>Xa(t,m.id)}
        >
          ${m.name}${$===m.name||!$?"":`, ${$}`}${_?" (is in it)":""}
        </button>`})}
    </div>
    <p class="choice">
      <button type="button" @click=${()=>{vb(t,n)}}>
        ${n.trim()?`Describe "${n.trim()}" as a fat of my own`:"Describe a fat of my own"}
      </button>
    </p>
  </div>`}function yb(t,e){let n=Ge(t).filter(a=>$i(a,e)!==void 0),o=e.split(/\s+/).filter(a=>a.length>2);if(n.length||o.length<2)return n;let i=a=>o.filter(d=>$i(a,d)!==void 0).length,s=Math.max(...Ge(t).map(i));return s?Ge(t).filter(a=>i(a)===s):[]}async function vb(t,e){if(!await gs(t))return;let o=e.trim(),i=kb(o,[...l.fats,...ft("own_fats","/fats")]),s=ft("own_fats","/fats").length;N("own_fats",`/fats/${s}`,{...lm,id:i,name:o}),Xa(t,i),de("own_fats",i),G(nt("own_fats",`/fats/${s}/${o?"inci":"name"}`))}function kb(t,e){let n=Bt(t).replaceAll(/[^a-z0-9]+/g,"_").replace(/^[_0-9]+|_+$/g,"")||"my_fat";for(let o=1;;++o){let i=o===1?n:`${n}_${o}`;if(!e.some(s=>s.id===i))return i}}function xb(t){let e=t.saponification_value,n=e,i=e===""||e!==null&&typeof e=="object"&&n.low===""?"to be filled in":e===void 0?"published values":e!==null&&typeof e=="object"?`${String(n.low)} to ${String(n.high)} mg KOH per g`:`${String(e)} mg KOH per g`;return`: ${t.lot?`${String(t.lot)}, `:""}${i}`}var Tb=[["published","As published"],["one","One value, from the supplier"],["range","A range, from the supplier"]],Rb={published:void 0,one:"",range:{low:"",typical:"",high:""}};function Sb(t,e){let n=`/fats/${e}/saponification_value`,o=g(t,n),i=o===void 0?"published":o!==null&&typeof o=="object"?"range":"one",s=g(t,`/fats/${e}/confirmed`)!==void 0,a=(d,c)=>f({label:d,of:t,at:c,number:!0,short:!0});return r` ${f({label:"Lot",of:t,at:`/fats/${e}/lot`,optional:!0,short:!0})}
  ${k({of:t,question:"Saponification value, mg of KOH for 1 g of fat (ISO 3657)",at:n,is_told_elsewhere:i==="one",chosen:i,answers:Tb,puts:d=>Rb[d],hint:Ab(t,D(t,`/fats/${e}/fat`))})}
  ${i==="one"?r`<div class="row">${a("Saponification value",n)}</div>`:u}
  ${i==="range"?r`<div class="row">
          ${a("Lowest",`${n}/low`)} ${a("Typical",`${n}/typical`)} ${a("Highest",`${n}/high`)}
        </div>`:u}
  ${i!=="published"||s?Ya(t,`/fats/${e}/confirmed`,"Checked in the supplier's document, though what is known of the fat contradicts it"):u}`}function Ab(t,e){let n=Ge(t).find(a=>a.id===e);if(!n)return;if("own"in n)return n.own?`In your file: ${n.own}.`:void 0;let{low:o,high:i,source:s}=n.saponification_value_mg_koh_per_g;return`Published: ${o} to ${i} (${s}).`}function Pb(t){let e=li(t),n=Array.isArray(e)?`In it: ${e.map(i=>i.name).join(", ")}.`:e==="none"?"No such file is found from here.":void 0,o=D(t,"/own_fats");return P({of:t,name:"own fats",pointers:["/own_fats"],summary:`A file of your own fats${o&&`: ${o}`}`,body:()=>f({label:"Its name, as it lies beside this formula",of:t,at:"/own_fats",optional:!0,hint:n??"Such as studio.fats.json. Its fats then stand in the list of fats."})})}var Db=t=>at.includes(t);function Vs(){let t=l.complaint;return!t?.field||t.lye_heavy?!1:ho().some(({of:e,at:n})=>ke(e)&&(n===t.field||n.startsWith(`${t.field}/`)))}function bi(){let t=l.complaint?ho():[];return t.length?r`<div class="needed">
    <p role="status"><strong>Still needed for the figures</strong>: ${t.length}</p>
    <ul class="choice">
      ${t.map(e=>r`<li>
            <button type="button" @click=${()=>Mb(e)}>
              ${e.part?r`<small>${e.part}</small> `:u}${e.label}
            </button>
          </li>`)}
    </ul>
  </div>`:u}function Mb({of:t,id:e,folds:n}){for(let o of n)lt(o);h({has_asked:!0}),Db(t)?(l.view!=="formula"||l.formula_of!==t)&&Gt(t):l.view!=="set-up"&&!(t==="own_fats"&&l.view==="formula")&&h({view:"set-up"}),requestAnimationFrame(()=>G(I(e)))}var hm="danger-of-superfat";function el(t,e){return r`<section class="card" aria-labelledby="lye-title">
    <h2 id="lye-title">Superfat, alkali, water</h2>
    <div class="row">
      ${f({label:"Superfat (share of all fat left unsaponified)",of:t,at:"/superfat",unit:"%",term:"superfat",described_by:Ze(t).length?hm:void 0})}
    </div>
    ${mi(t,hm)} ${Ob(t)} ${Wb(t,e)}
  </section>`}function Ob(t){let e=ft(t,"/alkali"),n=e.length>1?"both":e[0]?.alkali;return r`${k({of:t,question:"Alkali",term:"alkali",at:"/alkali",chosen:n,answers:[["NaOH","NaOH, for bars"],["KOH","KOH, for soft soap"],["both","Both"]],puts:i=>Fb(e,i),then:i=>i==="both"?"/alkali/0/share":"/alkali/0/purity"})}
  ${e.map((i,s)=>Cb(t,i,s,e.length>1))}
  ${e.length>1?r`<p class="total" role="status">
          ${zs("The two",e.map(i=>i.share))}
        </p>`:u}`}function Fb(t,e){let n=(o,i)=>({purity:"",...t.find(s=>s.alkali===o),alkali:o,share:i});return e==="both"?[n("NaOH",""),n("KOH","")]:[n(e,"100 %")]}function Cb(t,e,n,o){let i=`/alkali/${n}`,s=String(e.alkali??""),a=Rt(t,i)??Rt(t,`${i}/alkali`);return r`<div class="formula-row">
    ${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row">
      ${o||e.share!=="100 %"?f({label:`${s}: share of the fats it saponifies`,of:t,at:`${i}/share`,unit:"%",hint:"Counted by saponification, not by the weight of the alkali."}):u}
      ${f({label:`${s}: purity`,of:t,at:`${i}/purity`,unit:"%",hint:"Pure alkali in what is weighed, from the supplier's document.",term:n===0?"purity":void 0})}
    </div>
    ${P({of:t,name:i,pointers:[`${i}/purity_range`],summary:`Guaranteed purity range${Lb(e.purity_range)}`,body:()=>Eb(t,i)})}
  </div>`}var Lb=t=>Array.isArray(t)?`: ${t.map(String).join(" to ")}`:"";function Eb(t,e){let n=`${e}/purity_range`,o=g(t,n)!==void 0;return r`${k({of:t,question:"Guaranteed range",at:n,chosen:o?"said":"none",answers:[["none","Not given"],["said","From ... to"]],puts:i=>i==="none"?void 0:["",""]})}
  ${o?r`<div class="row">
          ${f({label:"Lowest",of:t,at:`${n}/0`,unit:"%",short:!0})}
          ${f({label:"Highest",of:t,at:`${n}/1`,unit:"%",short:!0})}
        </div>`:u}`}var Bb={lye_strength:"By the lye's strength",water_to_alkali:"By parts to the alkali",share_of_fats:"By the fats"};function Wb(t,e){let n=Object.keys(g(t,"/water")??{}),o=n.length===1?n[0]:void 0,i=Object.entries(Bb);return r`${k({of:t,question:"How is the water given?",at:"/water",chosen:o,answers:i,puts:s=>({[s]:""}),then:s=>`/water/${s}`,hint:Hb(e)})}
    <div class="row">${n.map(s=>Ib(t,s))}</div>`}function Ib(t,e){let n=`/water/${e}`;return e==="water_to_alkali"?f({label:"Parts of water for 1 part of pure alkali",of:t,at:n,number:!0}):e==="lye_strength"?f({label:"Strength: pure alkali in alkali and water together",of:t,at:n,unit:"%"}):f({label:"Water, as a share of the fats",of:t,at:n,unit:"%"})}function Hb(t){if(!(!t||l.is_old))return`It now makes a strength of ${T(t.lye_strength_percent,1)} %; ${T(t.water_to_pure_alkali,2)} parts to 1 of pure alkali; ${T(t.water_percent_of_fats,1)} % of the fats.`}function an(t,e,n){let o=jb(t,e);return P({of:t,name:`${e} label`,pointers:["inci","allergens","document"].map(i=>`${e}/${i}`),summary:`For the label${o&&`: ${o}`}`,body:()=>r`${qb(t,`${e}/inci`,n)}
        <p class="question">Fragrance allergens in it</p>
        ${gm(t,`${e}/allergens`,"Allergen","Add an allergen",(i,s)=>Ub(t,i,s))}
        ${f({label:"Supplier's document, with its date",of:t,at:`${e}/document`,optional:!0})}`})}function jb(t,e){let n=ft(t,`${e}/allergens`).length;return[g(t,`${e}/inci`)===void 0?"":"INCI given",n?`${n} ${n===1?"allergen":"allergens"}`:""].filter(Boolean).join(", ")}var nl={name:"",share:""},Nb={unsaid:void 0,one:"",many:[nl]};function qb(t,e,n){let o=g(t,e),i=o===void 0?"unsaid":Array.isArray(o)?"many":"one",s=a=>a==="many"&&o?[{...nl,name:o}]:Nb[a];return r`${k({of:t,question:`INCI of ${n}`,at:e,is_told_elsewhere:i!=="unsaid",chosen:i,answers:[["unsaid","Not given"],["one","One name"],["many","A composition"]],puts:s})}
  ${i==="one"?f({label:"INCI name",of:t,at:e}):u}
  ${i==="many"?r`<p class="hint">All that is in it, water too, until it adds to 100 %.</p>
          ${gm(t,e,"INCI name","One more INCI name")}`:u}`}function Ub(t,e,n){return k({of:t,question:`Allergen ${n+1}: on the EU's list?`,at:`${e}/listed`,chosen:g(t,`${e}/listed`)===!1?"other":"as_named",answers:[["as_named","Where its name stands there"],["other","No, another substance"]],puts:o=>o==="other"?!1:void 0})}function gm(t,e,n,o,i){let s={of:t,at:e};return r`${x(s).map((a,d)=>r`<div class="row named" id=${B(s,d)}>
        ${f({label:`${n} ${d+1}`,of:t,at:`${e}/${d}/name`})}
        ${f({label:`Share ${d+1}`,of:t,at:`${e}/${d}/share`,unit:"%",short:!0})}
        ${i?.(`${e}/${d}`,d)??u} ${z(s,d,String(a.name||`${n} ${d+1}`))}
      </div>`)}
  ${J(s,o,()=>q(s,nl,n))}`}var zb=[{list:"liquids",title:"Liquids in place of water",add:"Add a liquid",aside:"Milk, coconut milk, pur\xE9es, brine.",row:nw},{list:"additives",title:"Additives, salts and acids",add:"Add an additive",aside:"Whatever goes in beside fats, lye, fragrance and colour.",row:Gb},{list:"fragrances",title:"Fragrances",add:"Add a fragrance",aside:"Essential and fragrance oils.",row:Yb},{list:"colours",title:"Colours",add:"Add a colour",aside:"Micas, pigments and other colours. Those of layers stand in the run.",row:Zb}];function ol(t){return zb.map(e=>{let n={of:t,at:`/${e.list}`},o=x(n),i=(s,a)=>r`<li class="formula-row" id=${B(n,a)}>
        ${Vb(t,e,n,s,a)} ${e.row(t,`${n.at}/${a}`,s)}
      </li>`;return r`<section class="card" aria-labelledby="${e.list}-title">
      <h2 id="${e.list}-title">${e.title}</h2>
      ${o.length?r`<ol class="formula-rows">
              ${o.map(i)}
            </ol>`:r`<p class="aside">${e.aside}</p>`}
      ${J(n,e.add,()=>q(n,Jb(e),e.add.replace("Add ","")))}
    </section>`})}function Jb(t){return t.list==="liquids"?{name:"",goes_into:"",composition:""}:{name:"",rate:""}}function Vb(t,e,n,o,i){let s=`/${e.list}/${i}`,a=Rt(t,s),d=String(o.name||`number ${i+1} of the ${e.list}`);return r`${a?r`<p class="complaint">${a}</p>`:u}
    <div class="row named">
      ${f({label:"Name",of:t,at:`${s}/name`})}
      ${e.list==="liquids"?u:Us(t,`${s}/rate`,"How much",qs)}
      ${z(n,i,d)}
    </div>`}function _m(t,e,n,o){let i=`${e}/goes_into`,s=g(t,i);return k({of:t,question:"Goes into",at:i,chosen:s||void 0,answers:n,puts:p=>p,hint:o||s?void 0:"The batter, unless you name another place.",optional:!o})}function $m(t,e,n){let o=g(t,`${e}/stirred_in`);return r`${_m(t,e,Qb,n)}
  ${g(t,`${e}/goes_into`)==="lye"||o!==void 0?k({of:t,question:"Stirred into the lye",at:`${e}/stirred_in`,chosen:String(o??""),answers:Kb,puts:i=>i||void 0,hint:o===void 0?"Before the alkali; sodium lactate once the lye has cooled.":void 0}):u}`}var Kb=[["","As usual"],["before the alkali","Before the alkali"],["once the lye has cooled","Once the lye has cooled"]],Qb=[["lye","The lye"],["fats","The fats"],["batter","The batter"]];function il(t,e,n){let o=(a,d,c)=>a?`${d}${String(a)}${c}`:"",i=[o(n.bulk_density,""," in the spoon"),o(n.density,""," in the batter"),o(n.limit,"at most ","")].filter(Boolean).join(", "),s=["bulk_density","density","limit"].map(a=>`${e}/${a}`);return P({of:t,name:`${e} densities`,pointers:s,summary:`Densities and limit${i&&`: ${i}`}`,body:()=>r` <div class="row">
          ${f({label:"Bulk density (for spoons)",of:t,at:`${e}/bulk_density`,unit:"g/ml",optional:!0,hint:"A level cup weighed, by the cup's volume. Needed for spoons."})}
          ${f({label:"True density (in the batter)",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Once it is in the batter. Left out, water's is taken, and that is said."})}
        </div>
        ${Us(t,`${e}/limit`,"The most that the supplier's document allows",cm,!0)}`})}function sl(t,e,n,o){let i=(a,d)=>a===void 0?"":a==="none"?`no ${d}`:d,s=[i(n.contains_fat,"fat"),o?i(n.contains_acid,"acid"):""].filter(Boolean).join(", ");return P({of:t,name:`${e} holds`,pointers:[`${e}/contains_fat`,`${e}/contains_acid`],summary:`${o?"Fat or acid":"Fat"} in it${s&&`: ${s}`}`,body:()=>r`${rm(t,e)} ${o?Ga(t,e):u}`})}var Ks=(t,e,n)=>an(t,e,String(n.name||"it"));function Gb(t,e,n){return r`${$m(t,e,!0)}
    <div class="folds">${sl(t,e,n,!0)} ${il(t,e,n)} ${Ks(t,e,n)}</div>`}function bm(t,e,n){return P({of:t,name:`${e} place`,pointers:[`${e}/goes_into`,`${e}/stirred_in`],summary:`Goes into the ${String(n.goes_into??"batter")}`,body:()=>$m(t,e,!1)})}function Yb(t,e,n){return r`<div class="folds">
    ${il(t,e,n)} ${Ks(t,e,n)} ${bm(t,e,n)} ${sl(t,e,n,!1)}
  </div>`}function Zb(t,e,n){return r`${tw(t,e)}
    <div class="folds">
      ${il(t,e,n)} ${Ks(t,e,n)} ${bm(t,e,n)} ${sl(t,e,n,!0)}
    </div>`}var Xb=[["formula","taken out of the formula's"],["extra","put on top, and counted as fat"]];function tw(t,e){let n=`${e}/dispersed_in`,o=g(t,n)!==void 0,i=g(t,`${n}/from`);return r`${k({of:t,question:"Stirred into oil first",at:n,chosen:o?"oil":"dry",answers:[["dry","No"],["oil","Yes"]],puts:a=>a==="oil"?{fat:"",oil_per_colour:""}:void 0})}
  ${o?r`<div class="row">
            ${yt({label:"Which oil",of:t,at:`${n}/fat`,answers:Ns(t),unsaid:"choose ..."})}
            ${f({label:"Oil for 1 g of colour",of:t,at:`${n}/oil_per_colour`,number:!0,unit:"g",hint:"Or as you measure it: 1 tsp in 1 tbsp of oil."})}
          </div>
          ${k({of:t,question:"That oil is",at:`${n}/from`,chosen:i,answers:Xb,puts:a=>a,optional:!0,hint:i?void 0:"Taken out of the formula's own, unless you say so."})}`:u}`}var ew=["coconut milk, canned","goat milk","cow's milk, whole","cream, heavy","milk, evaporated","carrot, pur\xE9ed raw","cucumber, pur\xE9ed with its skin","pumpkin, canned pur\xE9e","avocado, pur\xE9ed","brine, saturated at 20 \xB0C"];function nw(t,e,n){let o=(i,s,a)=>P({of:t,name:`${e}/${i}`,pointers:[`${e}/${i}`],summary:s,body:a});return r`${iw(t,e,n)}
    ${_m(t,e,[["lye","The lye"],["batter","The batter"]],!0)}
    ${rw(t,e)}
    <div class="folds">
      ${o("frozen",n.frozen===!0?"Goes in as ice":"Frozen: no",()=>ow(t,`${e}/frozen`))}
      ${o("acid",`Acid in it${n.contains_acid===void 0?"":n.contains_acid==="none"?": none":": some"}`,()=>Ga(t,e))}
      ${o("density",`Density${n.density?`: ${String(n.density)}`:""}`,()=>f({label:"Density",of:t,at:`${e}/density`,unit:"g/ml",optional:!0,hint:"Left out, it is worked out from what is in it."}))}
      ${Ks(t,e,n)}
    </div>`}function ow(t,e){let n=g(t,e)===!0?"ice":"liquid";return k({of:t,question:"Goes in as ice, which keeps the lye cooler",at:e,chosen:n,answers:[["liquid","No"],["ice","Yes"]],puts:i=>i==="ice"?!0:void 0})}function iw(t,e,n){let o=n.replaces!==void 0?"replaces":n.rate!==void 0?"rate":void 0,i=s=>({...ot(t,e,["replaces","rate"]),[s]:""});return r`${k({of:t,question:"How much",at:e,asked_at:`${e}/replaces`,is_told_elsewhere:o!==void 0,chosen:o,answers:sw,puts:i})}
  ${o==="replaces"?r`<div class="row">
          ${f({label:"Of the formula's water",of:t,at:`${e}/replaces`,unit:"% of water",hint:"Its own water stands in for that share."})}
        </div>`:u}
  ${o==="rate"?Us(t,`${e}/rate`,"Rate",qs):u}`}var sw=[["replaces","In place of so much water"],["rate","By the fats or the batter"]];function rw(t,e){let n=`${e}/composition`,o=typeof g(t,n)=="object",i={water:"",sugar:"",salt:"",source:""},s=(d,c)=>f({label:d,of:t,at:`${n}/${c}`,unit:"%",short:!0});return r`${k({of:t,question:"What 100 g of it holds",at:n,is_told_elsewhere:!o,chosen:o?"label":"shipped",answers:[["shipped","Built-in figures"],["label","The label's figures"]],puts:d=>d==="label"?i:""})}
  ${o?r`<div class="row">${s("Water","water")} ${s("Sugar","sugar")} ${s("Salt","salt")}</div>
          ${Qa(t,`${n}/fat`,[["none","None"],["some","Holds fat"]],[["milk_fat","Milk fat"],...Ns(t)])}
          <div class="row">
            ${f({label:"Where the figures are from",of:t,at:`${n}/source`,hint:"Such as: the tin's label."})}
          </div>`:r`<div class="row">
          ${yt({label:"Built-in figures of",of:t,at:n,answers:ew.map(d=>[d,d]),unsaid:"choose ..."})}
        </div>`}`}var rl=!1;function wm(t){let{plan:e,explanation:n}=l,o=n?.of!==e;return o&&!rl&&lw(),{workings:aw(n?.workings,t),complaint:n?.complaint,is_old:o}}function aw(t,e){let n=t?.get(e);return n?[n]:[...t?.values()??[]].filter(({of:o})=>o.startsWith(`${e}.`))}async function lw(){let{plan:t,planned:e}=l;if(!(!t||!e)){rl=!0;try{let{how:n}=await ju(e);h({explanation:{of:t,workings:new Map(n.map(o=>[o.of,o]))}})}catch(n){if(!(n instanceof v))throw n;h({explanation:{of:t,workings:new Map,complaint:n.message}})}finally{rl=!1}}}function A({key:t,label:e,shown:n,of:o,working:i,size:s="plain",note:a,term:d}){let c=l.open.has(t),p=`sum-${t.replaceAll(/[^\w]/g,"-")}`;return r`<div class="figure ${d?"explains":""}">
    <button
      type="button"
      class="line"
      aria-expanded=${c?"true":"false"}
      aria-controls=${c?p:u}
      @click=${()=>Kt("open",t)}
    >
      <span class="name">${e}${a?r`<small>${a}</small>`:u}</span>
      <span class="value ${s==="weigh"?"large":""} ${l.is_old?"old":""}"
        ><b>${n[0]}</b>${n[1]?r` <i>${n[1]}</i>`:u}</span
      ><span class="how" aria-hidden="true">${c?"\u2013":"="}</span>
    </button>
    ${d?r`${Le(d)}${le(d)}`:u}
    ${c?r`<div class="sum" id=${p}>${i?ym(i):al(o)}</div>`:u}
  </div>`}var Cn=(t,e,n)=>A({key:t,label:e,shown:["",""],of:n});function al(t){let{workings:e,complaint:n,is_old:o}=wm(t);return e.length?r`<div class=${o?"old":""}>${e.map(ym)}</div>`:o?r`<p class="old" role="status">Asking how it is calculated ...</p>`:r`<p role="status">${n??"The program does not say how this is calculated."}</p>`}function ym({formula:t,with:e,sum:n,rounded:o,comes_to:i,sources:s}){let a=n&&i?`${n} = ${i}`:n??(i&&`It comes to ${i}`);return r`<p class="formula">${t}</p>
    <table>
      <caption>
        With
      </caption>
      <tbody>
        ${e.map(({name:d,value:c,from:p})=>r`<tr>
              <th scope="row">${d}</th>
              <td>${c}</td>
              <td>${p??""}</td>
            </tr>`)}
      </tbody>
    </table>
    ${a?r`<p class="comes-to">${a}${o?`, rounded ${o}`:""}</p>`:u}
    ${s.length?r`<p class="sources">From: ${s.join("; ")}.</p>`:u}`}var Ln="/pipe/beads",Be=`${Ln}/tip`,uw={of:"run",at:Be},xe={at:`${Ln}/moves`,in_order:!0},ll="\0own",Tm={tip:"",bead_to_opening:"",moves:[]},ce=(t,e)=>({name:t,label:e,kind:"length"}),vm={name:"count",label:"How many",kind:"count"},km=ce("circle_radius","Radius of their circle"),ul={dollop:{words:"Dollop",does:"A heap in the middle.",measures:[ce("diameter","Diameter"),ce("height","Height")]},ring:{words:"Ring",does:"One closed turn.",measures:[ce("radius","Radius, to the bead's middle")]},spiral:{words:"Spiral",does:"Turns that climb, wider or narrower.",measures:[{name:"turns",label:"Turns",kind:"number"},ce("start_radius","Radius at the start"),ce("end_radius","Radius at the end"),ce("rise","Rise")]},tail:{words:"Tail",does:"Drawn straight up to a point.",measures:[ce("length","Length")]},dots:{words:"Dots",does:"Upright dabs on a circle.",measures:[vm,km,ce("height","Height")]},shells:{words:"Shells",does:"Strokes lying outward from a circle.",measures:[vm,km,ce("length","Length")]},bead:{words:"Straight bead",does:"Along the mould.",measures:[ce("length","Length"),{name:"aside",label:"Distance from the middle",kind:"signed",optional:!0}]}};function Rm(t){return r`${cw()} ${dl()?Dm(uw):fw()}
    ${f({label:"Bead \xF7 tip opening",at:`${Ln}/bead_to_opening`,number:!0,hint:"Section of the bead \xF7 opening of the tip: 1 if they are the same."})}
    <h4>What the tip does, in order</h4>
    <div class="items">${x(xe).map((e,n)=>ww(e,n,t))}</div>
    ${kw()}`}var dl=()=>typeof g("run",Be)=="object",Sm=()=>String(g("run",`${Ln}/own_tips`)??g("studio","/own_tips")??"");function dw(){let t=Sm(),e=t?Pa(t):[];return g("run",`${Ln}/own_tips`)===void 0?[...e,...Aa()]:e}function cw(){let t=n=>n===ll?L("run","a tip of your own",Be,{name:"",round:{radius:""}},Pm):N("run",Be,n),e=dw().map(n=>[n.name,n.opening?`${n.name} (${n.opening})`:n.name]);return r`${yt({label:"Tip",at:Be,answers:[...e,[ll,"My own, measured"]],unsaid:"Which tip?",take:t,chosen:dl()?ll:void 0})}
  ${dl()?u:P({name:"tips",pointers:[`${Ln}/own_tips`],summary:"Tips of a file of your own",body:()=>f({label:"File of tips",at:`${Ln}/own_tips`,optional:!0,hint:"Beside your run, such as studio.tips.json. Emptied, the built-in tips are offered."})})}`}var Am=on("run",Be,"own"),Pm=sn(Am);async function pw(){let t=g("run",Be);if(!await ra())return;let e=ft("own_tips","/tips"),n=mw(String(t.name).trim()||"My tip",e);Ve([["own_tips",o=>M(o,`/tips/${e.length}`,{...t,name:n})],["run",o=>M(o,Be,n)]]),E(`${n} kept in ${l.beside.own_tips.file}`)}function mw(t,e){for(let n=1;;++n){let o=n===1?t:`${t} ${n}`;if(![...e,...Aa()].some(i=>i.name===o))return o}}function fw(){let t=D("run",Be),e=Sm();if(!t||!e||!Pa(e).some(o=>o.name===t))return u;let n=ft("own_tips","/tips").findIndex(o=>o.name===t);return n<0?r`<button type="button" @click=${()=>{ra()}}>Change this tip of my own</button>`:Dm({of:"own_tips",at:`/tips/${n}`})}var xm=[["round","Round"],["star","Star"],["outline","Another outline"]],Qs={x:"",y:""},hw={round:{radius:""},star:{points:"",outer_radius:"",inner_radius:""},outline:[Qs,Qs,Qs]};function Dm({of:t,at:e}){let n=xm.map(([s])=>s),o=n.find(s=>g(t,`${e}/${s}`)!==void 0),i=s=>({...ot(t,e,n),[s]:hw[s]});return r`<div class="part" id=${Am} role="group" aria-label="My own tip">
    ${H(t,e)} ${gw({of:t,at:e})}
    ${k({of:t,question:"Opening of the tip",at:e,is_told_elsewhere:!0,chosen:o,answers:xm,puts:i})}
    ${o?$w({of:t,at:e},o):u}
    ${P({of:t,name:"hand",pointers:[`${e}/hand`,`${e}/note`],summary:"Correction for your hand",body:()=>_w({of:t,at:e})})}
    ${t==="run"?r`<button type="button" @click=${()=>{pw()}}>Keep this tip for all my runs</button>`:r`<p class="hint">It stands in ${l.beside.own_tips.file}, for every run that names this file.</p>`}
  </div>`}var gw=({of:t,at:e})=>t==="run"?f({label:"What you call the tip",at:`${e}/name`}):r`<p class="part-title">${D(t,`${e}/name`)}</p>`;function _w({of:t,at:e}){let n=`${e}/hand`,o=i=>g(t,i)!==void 0;return r`<div class="row">
      ${f({of:t,label:"Correction for your hand",at:`${n}/correction`,number:!0,short:!0,optional:!0,takes_part:!0,hint:"What your toppings weigh \xF7 what the moves come to."})}
      ${o(`${n}/correction`)?f({of:t,label:"From so many trials",at:`${n}/trials`,count:!0,optional:!0,short:!0}):u}
    </div>
    ${o(n)?r`<button type="button" @click=${()=>L(t,"correction removed",n,void 0,Pm)}>
            Leave the correction out
          </button>`:u}
    ${f({of:t,label:"Note on the tip",at:`${e}/note`,optional:!0})}`}function $w(t,e){if(e==="outline")return bw(t);let{of:n,at:o}=t,i=(s,a)=>f({of:n,label:a,at:`${o}/${e}/${s}`,unit:"mm",short:!0});return r`<div class="row">
    ${e==="round"?i("radius","Radius of the opening"):r`${f({of:n,label:"Points",at:`${o}/star/points`,count:!0,short:!0})}
          ${i("outer_radius","Radius to the points")} ${i("inner_radius","Radius to the notches")}`}
  </div>`}function bw({of:t,at:e}){let n={of:t,at:`${e}/outline`};return r`<p class="hint">
      Its corners in order, seen from the front, as far right (x) and up (y) as they lie; −8 mm is to the left.
    </p>
    ${x(n).map((o,i)=>r`<div class="row" id=${B(n,i)}>
          ${f({of:t,label:`Corner ${i+1}, x`,at:`${n.at}/${i}/x`,unit:"mm",short:!0})}
          ${f({of:t,label:`Corner ${i+1}, y`,at:`${n.at}/${i}/y`,unit:"mm",short:!0})}
          ${z(n,i,`corner ${i+1}`)}
        </div>`)}
    ${J(n,"One more corner",()=>q(n,Qs,"corner"))}`}function ww(t,e,n){let o=ul[String(t.move)],i=`${xe.at}/${e}`,s=`${e+1}. ${o?.words??String(t.move)}`;return r`<div class="part" id=${B(xe,e)} role="group" aria-label=${s}>
    <div class="part-head">
      <p class="part-title">${s}</p>
      ${z(xe,e,s)}
    </div>
    ${H("run",i)}
    <div class="row">
      ${(o?.measures??[]).map(a=>yw(i,a))}
      ${f({label:"Starts at height",at:`${i}/at_height`,unit:"mm",optional:!0,short:!0})}
    </div>
    ${vw(e,n)}
  </div>`}function yw(t,{name:e,label:n,kind:o,optional:i}){let s=o==="signed"?"\u221212 mm is to the other side.":void 0,a=o==="length"||o==="signed"?"mm":void 0;return f({label:n,at:`${t}/${e}`,unit:a,hint:s,optional:i,short:!0,count:o==="count",number:o==="number"})}function vw(t,e){let n=e?.visible_by?.moves??[],o=n[t];if(!o||n.length!==x(xe).length)return u;let i=o.length_mm>0?`${T(o.length_mm/10,1)} cm of bead`:"";return A({key:`pipe.move.${t}`,label:"Lays down",note:i,shown:wt(l.units,o.volume_ml),of:`pipe.visible_by.moves.${t}.volume_ml`})}function kw(){let t=o=>({move:o,...Object.fromEntries(ul[o].measures.filter(i=>!i.optional).map(i=>[i.name,""]))}),e=X("run",xe.at),n=Rt("run",xe.at);return x(xe).length||qt("run",xe.at,e,"What the tip does"),r`${Pt(e,n)}
    <div
      class="choice words"
      role="group"
      id=${e}
      tabindex="-1"
      aria-label="Add a move"
      aria-describedby=${n?`${e}-said`:u}
    >
      ${Object.entries(ul).map(([o,{words:i,does:s}])=>r`<button type="button" @click=${()=>q(xe,t(o),i)}>
            <b>+ ${i}</b> <small>${s}</small>
          </button>`)}
    </div>
    <p class="hint">
      Without a height a move starts on the paper; a spiral or a tail goes on where the move before it ended.
    </p>`}var gt=()=>l.beside.studio!==void 0,wi=({run:t})=>g("run",t),cl=({studio:t})=>g("studio",t);function yi(t){return wi(t)===void 0&&gt()?{of:"studio",at:t.studio}:{of:"run",at:t.run}}var Te=t=>wi(t)??cl(t),Dt=(t,e)=>f({...e,...yi(t)}),pl=t=>t===void 0||t===""||t!==null&&typeof t=="object"&&!Object.keys(t).length;function vi(t,e=""){return t===void 0||pl(t)?[]:t===null||typeof t!="object"||Array.isArray(t)?[[e,t]]:Object.entries(t).flatMap(([n,o])=>vi(o,`${e}/${U(n)}`))}function ki(t,e){for(let n=e;n;n=n.slice(0,n.lastIndexOf("/")))b(t,n)!==void 0&&pl(b(t,n))&&(t=M(t,n,void 0));return t}var xi=(t,e)=>e.reduce((n,o)=>ki(M(n,o,void 0),o),t);function Om(t){let e=new Map;return t.flatMap(n=>vi(wi(n)).flatMap(([o,i])=>{let s=n.studio+o,a=e.get(s)??g("studio",s);return pl(a)||String(a).startsWith("?")||a===i?(e.set(s,i),[[n.run+o,s,i]]):[]}))}async function ml(t){gt()||await ic();let e=Om(t);Ve([["studio",n=>e.reduce((o,[,i,s])=>M(o,i,s),n)],["run",n=>xi(n,e.map(([o])=>o))]]),E("Kept in the studio")}function xw(t){let e=t.flatMap(o=>vi(cl(o)).map(([i,s])=>[o.run+i,s]));Ve([["run",o=>e.reduce((i,[s,a])=>b(i,s)===void 0?M(i,s,a):i,o)]]),E("Said in this run only")}function Tw(t){let e=t.flatMap(n=>vi(wi(n)).filter(([o])=>g("studio",n.studio+o)!==void 0).map(([o])=>n.run+o));Ve([["run",n=>xi(n,e)]]),E("Taken from the studio again")}var Mm=t=>vi(t).length>0;function $o(t,e){if(!gt())return u;let n=e.some(s=>Mm(wi(s))),o=e.some(s=>Mm(cl(s))),i=(s,a)=>r`<button type="button" aria-label="${t}: ${s}" @click=${a}>${s}</button>`;return r`<span class="who-says">
    <small>${n?"in this run only":o?"from the studio":"kept in the studio"}</small>
    ${n&&Om(e).length?i("Keep in my studio",()=>{ml(e)}):u}
    ${n&&o?i("As in the studio",()=>Tw(e)):u}
    ${!n&&o?i("Otherwise in this run",()=>xw(e)):u}
  </span>`}function fl(t){let e=Object.keys(g("studio","/moulds_owned")??{}),n=l.files?.moulds;return e.find(o=>Lt(o,n)===Lt(t,n))??t}var Ti=()=>Object.keys(g("studio","/cups")??{}),Ri=()=>Ti().length===1?{net:""}:Ti().length?{cup:"",net:""}:{holds:"",net:""},Fm="\0another";function Si(t,e="Cup holds"){let n=`${t}/holds`,o=Ti();if(g("run",n)!==void 0||!o.length)return r`${f({label:e,at:n,unit:"ml",short:!0})}${o.length?Rw(t):u}`;let i=a=>a===Fm?L("run","Another cup",t,{...hl(t),holds:""},nt("run",n)):L("run",`Cup: ${a}`,t,{...hl(t),cup:a}),s=a=>D("studio",`/cups/${U(a)}`);return yt({label:"Which cup",at:`${t}/cup`,answers:[...o.map(a=>[a,`${a}, ${s(a)}`]),[Fm,"Another cup"]],unsaid:"choose ...",chosen:D("run",`${t}/cup`)||(o.length===1?o[0]:""),take:i})}function hl(t){let{cup:e,holds:n,...o}=g("run",t)??{};return o}var Rw=t=>r`<button type="button" @click=${()=>L("run","A cup of the studio",t,hl(t))}>
    A cup of my studio
  </button>`;function Lm(){return gt()?r`<div class="row">
    ${Ti().map(t=>f({of:"studio",label:`${t} holds`,at:`/cups/${U(t)}`,unit:"ml",short:!0,optional:!0}))}
    ${Sw()}
  </div>`:r`<p class="hint">Each reading says what its cup holds, as long as there is no studio.</p>`}function Sw(){let t=()=>{let e=document.getElementById("new-cup"),n=e.value.trim()||Cm();e.value="",L("studio",`${n} added`,`/cups/${U(n)}`,"",nt("studio",`/cups/${U(n)}`))};return r`<div class="field short">
      <label for="new-cup">Another weigh-cup, its name</label>
      <input id="new-cup" autocomplete="off" spellcheck="false" placeholder=${Cm()} />
    </div>
    <button type="button" @click=${t}>Add the cup</button>`}function Cm(){for(let t=1;;++t){let e=t===1?"weigh-cup":`weigh-cup ${t}`;if(!Ti().includes(e))return e}}var Aw=["ice bath","cold water","fridge","room"].map(t=>[t,t==="room"?"the room":t]),gl=t=>({run:`/${t}/temperatures`,studio:`/temperatures/${t}`});function Gs(t){let{run:e}=gl(t);return P({name:e,pointers:[e],summary:"How warm",body:()=>r` <p class="hint">
          ${gt()?"Your studio says what is usual. ":""}What you leave blank is left out.
        </p>
        ${$o("How warm",[gl(t)])} ${H("run",e)} ${Pw(t)}`})}function Pw(t){let{run:e,studio:n}=gl(t),o=d=>({run:`${e}/${d}`,studio:`${n}/${d}`}),i=l.units==="us"?"\xB0F":"\xB0C",s=(d,c,p=i)=>Dt(o(d),{label:c,unit:p,optional:!0,takes_part:!0,short:!0}),a=o("cooled_in");return r`<div class="row">
    ${s("room_at","Room and dry alkali")} ${s("water_at","Water")}
    ${s("ice_share","Of the water, as ice","%")} ${s("lye_used_at","Lye when it is used")}
    ${s("fats_at","Fats")} ${s("batter_below","Batter must stay below")}
    ${yt({label:"The lye cools in",...yi(a),answers:Aw,unsaid:"not given",optional:!0})}
  </div>`}var Ut=()=>b(l.run.now,"/pipe")!==void 0;function Em(){let t=e=>{let n=M(e,"/pipe",{formula:"",fills_headspace:"",whip:Ri()});return gt()?n:M(n,"/losses/pipe",{bag:"",bowl_and_whisk:""})};lt("set-up pipe"),rn("run","Topping added",t,I("lane-pipe"))}function Dw(t){let e=Object.keys(b(t,"/batch")??{}).length===1;return["/pipe","/losses/pipe","/lye_pot",b(t,"/batch/whippings")!==void 0&&e?"/batch":"/batch/whippings"].reduce((o,i)=>b(o,i)===void 0?o:M(o,i,void 0),t)}function Mw(){rn("run","Topping removed",Dw,I("topping-back"))}function Bm(){let t=l.past.at(-1)?.run?.now;return!t||b(t,"/pipe")===void 0||Ut()?u:r`<button type="button" id="topping-back" @click=${fs}>Bring the topping back</button>`}function _l(){return r`${Ww()} ${Gs("pipe")}
    <p class="choice"><button type="button" @click=${Mw}>Take the topping away</button></p>`}var Ow=["trials","beads","envelope"];function $l(t){return Ow.every(e=>g("run",`/pipe/${e}`)===void 0)&&qt("run","/pipe",`${X("run","/pipe/trials")}-add`,"How large the topping is"),r`<h3>How large is the topping?</h3>
    ${H("run","/pipe")}
    <p class="hint">
      Weighed trials are used first, then beads, then the outline; the others are shown for comparison.
    </p>
    <div class="items">
      ${ue({at:"/pipe/trials",name:"the trials",title:"Trials piped on paper",add:"Weigh trials piped on paper",blank:{weighed:[""],weigh_cup:Ri()},body:Fw})}
      ${ue({at:"/pipe/envelope",name:"the outline",title:"Its outline",add:"Measure its outline",blank:{form:"",diameter:"",height:"",soap_share:""},body:Cw})}
    </div>
    ${ue({at:"/pipe/beads",name:"the beads",title:"Beads from a tip",add:"Calculate it from the tip and its moves",blank:Tm,body:()=>Rm(t)})}
    ${t?Ew(t):u}`}function Fw(){let t={at:"/pipe/trials/weighed",least:1};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${B(t,n)}>
            ${f({label:`Trial ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${z(t,n,`trial ${n+1}`)}
          </div>`)}
    </div>
    ${J(t,"One more trial",()=>q(t,"","trial"))}
    <div class="row">
      ${f({label:"Weigh-cup of the trials, net",at:"/pipe/trials/weigh_cup/net",unit:"g"})}
      ${Si("/pipe/trials/weigh_cup")}
    </div>
    ${H("run","/pipe/trials/weigh_cup")}`}function Cw(){let t="/pipe/envelope",e=g("run",`${t}/form`);return r`${k({question:"Form of the outline",at:`${t}/form`,chosen:e,answers:[["cone","Cone"],["dome","Dome"]],puts:n=>n})}
    <div class="row">
      ${f({label:"Diameter",at:`${t}/diameter`,unit:"mm",short:!0})}
      ${f({label:"Height",at:`${t}/height`,unit:"mm",short:!0})}
      ${f({label:"Share that is soap, not air",at:`${t}/soap_share`,unit:"%",short:!0,hint:"Topping, not air between its ridges."})}
    </div>`}var Lw={trials:"By weighed trials",beads:"By beads",envelope:"By its outline"};function Ew(t){let e=t.visible_by;if(!e)return u;let n=["trials","beads","envelope"].map(i=>({way:i,ml:e[`${i}_ml`]})).filter(i=>typeof i.ml=="number"),o=i=>n.length<2?void 0:i===0?"this one counts":"for comparison";return r`<h4>${n.length<2?"Visible topping":"The ways compared, visible shape alone"}</h4>
    ${n.map(({way:i,ml:s},a)=>A({key:`pipe.by.${i}`,label:Lw[i],note:o(a),shown:wt(l.units,s),of:`pipe.visible_by.${i}_ml`}))}
    ${Bw(t)}`}function Bw(t){let e=t.visible_by?.suggested_correction;if(!e||l.is_old)return u;let n=T(e.correction,2),o="/pipe/beads/tip/hand",i=typeof g("run","/pipe/beads/tip")=="object",s=i&&b(l.run.now,`${o}/correction`)!==e.correction,a=()=>L("run","correction kept",o,{correction:e.correction,trials:e.trials});return r`<p>
      Your hand lays down ${n} times the computed beads (${e.trials}
      ${e.trials===1?"trial":"trials"}): keep that as the tip's hand
      factor${i?"":", in your file of tips or by measuring the tip as your own"}.
    </p>
    ${s?r`<button type="button" @click=${a}>Keep ${n} for my tip</button>`:u}`}function bl(t){return r`<h3>The whip planned for</h3>
    <div class="row">
      ${f({label:"Weigh-cup, net",at:"/pipe/whip/net",unit:"g",term:"weigh_cup"})}
      ${Si("/pipe/whip")}
    </div>
    ${H("run","/pipe/whip")}
    ${t?.loads?r`<p class="aside of-plan">${t.loads} bag loads.</p>`:u}`}function Ww(){let t="/pipe/pace",e=(n,o,i,s=!1)=>f({label:n,at:`${t}/${o}`,unit:i,optional:s,short:!0});return P({name:"pace",pointers:[t],summary:"Piping speed",body:()=>ue({at:t,name:"the pace",title:"The pace",add:"Add your piping speed",blank:{open_time:"",time_per_piece:""},body:()=>r`<div class="row">
            ${e("Can be piped for","open_time","min")} ${e("To pipe one","time_per_piece","s")}
            ${e("To change the bag","time_per_bag_change","s",!0)}
          </div>`})})}function Iw(t,{at:e,figure:n}){let o=b(t,e),i=Array.isArray(o)?o:typeof o=="string"?[o]:[];return i.length?[...i,n]:n}function Ai(t,e,n){return e?r`<button type="button" @click=${()=>n(e.at,Iw(t,e))}>It is really so: keep it</button>`:u}var Ys=t=>/^\s*0*[1-9]\d{0,8}\s*$/.test(t)?Number(t):void 0;function Zs(t,e,n){return r`<div class="field short">
    <label for=${t} data-said="required">Pieces to sell</label>
    <input
      id=${t}
      aria-required="true"
      .value=${j(e)}
      @input=${o=>n(o.target.value)}
      autocomplete="off"
      spellcheck="false"
      inputmode="numeric"
    />
  </div>`}var Wm=t=>[...l.files?.runs??[],...l.files?.formulas??[]].find(e=>e.file===t)?.name||t;function Xs(t){let e=t?.used_by??[];return e.length?r`<p class="aside">Used by ${fi(e.map(Wm))}.</p>`:u}function tr(t){let e=t?.used_by??[];return e.length<2?u:r`<p class="mind" role="note">
    <strong>Caution</strong> Used by ${fi(e.map(Wm))}: a change here changes
    ${e.length===2?"both":`all ${e.length}`}.
  </p>`}function Hw({outline:t,above:e}){let n=Math.max(4,(t.right-t.left)*.06),o=e.flat().map(([,m])=>m),[i,s]=o.length?[Math.min(...o),Math.max(...o)]:[0,0],a=-t.brim-2*n+i,d=a-s-n,c=[t.left-n,d,t.right-t.left+2*n,-t.floor+n-d],p=(m,_)=>F`<path class="shaded pour" fill-rule="evenodd" d=${_} /><path class="wall ${m}" fill-rule="evenodd" d=${_} />`;return r`<div class="drawing tall">
    <svg
      viewBox=${c.join(" ")}
      role="img"
      aria-label="The cavity from above and, beneath it, cut through its middle and seen from the side, to one scale"
    >
      ${p("above",si(e,a))}${p("side",si(t.loops))}
    </svg>
  </div>`}function bo(t,e=!1,n=[]){let o=n.length?r`<p class="hint" role="status">Still needed: ${n.join(", ")}.</p>`:u;if(!t)return r`<p class="hint">The drawing and the volume stand here as soon as every measure is in.</p>
      ${o}`;let{gauge:i}=t,s=i.pockets[0];return r`${Hw(t)}
    <p class="order ${e?"old":""}" role="status">
      Holds
      <b>${S(wt(l.units,s.brimful_ml))}</b>${i.pockets.length>1?r` in each of ${i.pockets.length}, ${S(wt(l.units,i.total_ml))} together`:u},
      ${S(_t(l.units,s.brim_mm-s.floor_mm))} deep.
    </p>
    ${o}
    ${(i.measurements?.length??0)>1?r`<p class="aside">
            ${i.measurements.map(a=>`By ${a.by} ${S(wt(l.units,a.brimful_ml))}`).join("; ")}.
          </p>`:u}
    ${i.notes.length?r`<ul class="limits">
            ${i.notes.map(a=>r`<li>${a.text}</li>`)}
          </ul>`:u}`}var jw={mm:"in",g:"oz","\xB0C":"\xB0F"},Nw={mm:/^(mm|cm|m|in|inch|inches|ft|"|″|”)$/,g:/^(mg|g|kg|oz|lb|lbs)$/,"\xB0C":/^(°?C|°?F)$/,"\xB0":/^(°|deg|degrees?)$/,h:/^(min|h|hours?|d|days?)$/};function er(t,e,n=""){let o=wl(t);if(o)return o.unit??"";let i=ve(b(O(),t));return Nw[e]?.test(i)?i:n||(l.units==="us"?jw[e]??e:e)}var nr=()=>h({typed:void 0}),wo=t=>`d${t.replaceAll("/","-")}`,wl=t=>l.typed?.key===wo(t)?l.typed:void 0,or=t=>wl(t)?.text??String(b(O(),t)??"");function ln(t){let{complaint:e}=W();return e&&(e.field===t||e.field.startsWith(`${t}/`))?e.line:void 0}function yl(t,e,n,o){let{pointer:i}=t,s=a=>{let d=a.target.value,c=t.unit?er(i,t.unit,t.unit_before):"";h({typed:{key:wo(i),text:d,unit:c}}),ht(i,qw(t,d,c))};return r`<input
    id=${wo(i)}
    .value=${j(or(i))}
    @input=${s}
    @blur=${nr}
    @keydown=${n??u}
    autocomplete="off"
    spellcheck="false"
    inputmode=${t.count?"numeric":"text"}
    aria-label=${o??u}
    aria-describedby=${e??u}
    aria-invalid=${ln(i)?"true":"false"}
  />`}function qw(t,e,n){if(!((t.optional||t.count)&&!e.trim()))return t.count&&/^\s*\d{1,6}\s*$/.test(e)?Number(e):n&&tn(e)?`${e.trim()} ${n}`:e}function zt(t,e){let n=wo(t.pointer),o=ln(t.pointer),i=Uw(t.pointer)??t.hint,s=t.unit?` (${er(t.pointer,t.unit,t.unit_before)})`:"";return r`<div class="field ${t.wide?"wide":"short"} ${o?"wants":""}">
    <label for=${n}>${t.label}${s}</label> ${yl(t,o||i?`${n}-said`:void 0,e)}
    ${Pt(n,o,i)}
  </div>`}function Uw(t){let e=b(O(),t),n=wl(t);if(!(!n?.text.includes("/")||typeof e!="string"||e===n.text))return`taken as ${e}`}function ir(t){let e=t.toLowerCase(),{file:n,shipped:o}=W().open,i=o?"":n;return l.files?.moulds.find(s=>s.file!==i&&s.name.trim().toLowerCase()===e)?.file}async function Pi(t){let{open:e}=W();try{if(await $e(e),e.theirs)return void requestAnimationFrame(()=>window.scrollTo(0,0));h({files:await Wn()})}catch(n){if(!(n instanceof v))throw n;return Ba(n)}l.run.file&&(ae(),et()),t(e.file)}var We="/shape/points",Im=500,un=(t,e)=>[We,t,...e?[e]:[]].join("/"),Hm=t=>Array.from({length:t.least},()=>({}));function jm(t){let e=Nt(O(),We),n=Jw(),{complaint:o}=W(),i=o?.field===We&&!o.about?o.line:void 0;return r`<h3 id="points-title">Points</h3>
    <p class="hint">${t.words}</p>
    <div class="points" role="group" aria-labelledby="points-title">
      <div class="point head" aria-hidden="true">
        <span></span>${t.columns.map(s=>r`<span
              >${s.label} (${er(un(-1,s.name),s.unit,Nm(t,e.length,s.name))})</span
            >`)}
      </div>
      ${e.map((s,a)=>zw(t,a,n))}
    </div>
    ${i?r`<p class="complaint">${i}</p>`:u}
    <button type="button" ?disabled=${e.length>=Im} @click=${()=>rr(t,e.length)}>Add a point</button>
    <p class="hint">
      Enter goes on, and adds a point after the last; Shift with Enter puts one in between; Backspace in an empty one
      takes it away.
    </p>`}function zw(t,e,n){let o=n.has(e)?`point ${n.get(e)}`:"empty point",i=Vw(e),s=a=>{let{name:d,label:c,unit:p}=t.columns[a],m={label:c,pointer:un(e,d),unit:p,unit_before:Nm(t,e,d)},_=`${c}, ${n.has(e)?o:`point ${e+1}`}`;return yl(m,i?`point-${e}-said`:void 0,Kw(t,e,a),_)};return r`<div class="point ${i?"wants":""}">
    <span class="number">${n.get(e)??""}</span>${s(0)}${s(1)}
    <button type="button" tabindex="-1" aria-label="Put a point before ${o}" @click=${()=>rr(t,e)}>
      +
    </button>
    <button type="button" tabindex="-1" aria-label="Take ${o} away" @click=${()=>qm(t,e)}>×</button>
    ${i?r`<p id="point-${e}-said" class="complaint">${i}</p>`:u}
  </div>`}function Jw(){let t=[...Jo(O()),...ss(O())].sort((e,n)=>e-n);return new Map(t.map((e,n)=>[e,n+1]))}function Vw(t){let{complaint:e}=W();return ln(un(t))??(e?.about===un(t)?e.line:void 0)}function Nm(t,e,n){let o=(i,s)=>ve(b(O(),un(i,s)));for(let i=e-1;i>=0;--i)if(o(i,n))return o(i,n);return t.columns.map(({name:i})=>o(e,i)).find(Boolean)??""}function sr(t,e){queueMicrotask(()=>document.getElementById(wo(un(t,e)))?.focus())}function rr(t,e){let n=[...Nt(O(),We)];n.length>=Im||(n.splice(e,0,{}),nr(),ht(We,n),sr(e,t.columns[0].name))}function qm(t,e,n=0){let o=Nt(O(),We).filter((i,s)=>s!==e);nr(),ht(We,o.length?o:[{}]),sr(Math.max(0,Math.min(e-(n?1:0),o.length-1)),t.columns[n].name)}function Kw(t,e,n){let[o,i]=t.columns.map(({name:s})=>s);return s=>{let a=!or(un(e,o))&&!or(un(e,i));if(s.key==="Enter"&&s.shiftKey)rr(t,e+1);else if(s.key==="Enter"&&n===0)sr(e,i);else if(s.key==="Enter"&&e+1<Nt(O(),We).length)sr(e+1,o);else if(s.key==="Enter")rr(t,e+1);else if(s.key==="Backspace"&&a&&Nt(O(),We).length>1)qm(t,e,e>0?1:0);else return;s.preventDefault()}}var vl={weighings:[""]},kl=/\.(3mf|gltf|glb)$/i;function ar(t){let e=Ue(t);return e?{kind:t,points:Hm(e)}:{kind:t}}var Qw=()=>ht("/water",vl),Re=t=>oe(O(),t),Di=()=>zo(O());function Um(t){let{open:e,answer:n,is_old:o}=W();return r`${co(e,()=>{Pi(t)})} ${po(e)}
    ${e.shipped?u:tr(l.files?.moulds.find(i=>i.file===e.file))}
    ${Re("shape")&&Re("mesh")?r`<p class="hint">The mesh is measured; its measures are a check.</p>`:u}
    ${Re("shape")?rt("Shape",Di(),Object.entries(Sd),Gw):u}
    <div class="beside ${Ue(Di())?"rows":""}">
      <div>
        ${xl()} ${Re("shape")?Zw():u} ${Re("mesh")?Xw():u}
        ${Tl()} ${Re("water")?ey():u} ${oy()}
      </div>
      <div class="stays">${bo(n,o,Jm())} ${iy(t)}</div>
    </div>`}function Gw(t){let e={...W().shapes,[Di()]:O().shape};y(W(),{shapes:e,answer:void 0}),ht("/shape",e[t]??ar(t))}function Yw(){let{shipped:t,file:e}=W().open;return t?l.files?.moulds.find(n=>n.file===e)?.name??e:void 0}function xl(){let t=Yw();return zt({label:"What you call it",pointer:"/name",wide:!0,hint:t?`${t} stays as it is in the catalogue; this becomes a mould of your own, under a name of its own.`:void 0})}function Zw(){let t=Di(),e=Ue(t);return r`${qn(t).length?r`<div class="row">
          ${qn(t).map(n=>zt({...n,pointer:`/shape/${n.name}`}))}
        </div>`:u}
  ${e?jm(e):u}`}function Tl(t=Qr(O())){return r`<div class="row">
      ${t?u:zt({label:"Cavities in one mould",pointer:"/cavities",count:!0})}
      ${zt({label:"Moulds you own",pointer:"/owned",count:!0,optional:!0})}
      ${zt({label:"Unmould after",pointer:"/unmould_after",unit:"h",optional:!0})}
    </div>
    ${zt({label:"Note",pointer:"/note",optional:!0,wide:!0})}`}var Rl=[["cavity","What is filled, or the piece"],["body","The mould with its pockets"],["skin","The mould's inner surface"]],Sl=[["","As it is"],["+z","+z"],["+y","+y"],["-z","-z"],["-y","-y"],["+x","+x"],["-x","-x"]];function Xw(){let t=o=>String(b(O(),`/mesh/${o}`)??""),e=(o,i,s)=>{let a=ln(`/mesh/${i}`);return r`<h4>${o}</h4>
      ${rt(o,t(i),s,d=>ht(`/mesh/${i}`,d||void 0))}
      ${a?r`<p class="complaint">${a}</p>`:u}`},n=ln("/mesh/file");return r`<h3>Its mesh <small>${t("file")}</small></h3>
    ${n?r`<p class="complaint">${n}</p>`:u}
    ${kl.test(t("file"))&&!t("unit")?u:e("Unit of the file's numbers","unit",["mm","cm","m","in"].map(o=>[o,o]))}
    ${e("What it shows","role",Rl)} ${e("Which way is up","up",Sl)}
    ${t("role")==="body"?ty():u}
    <div class="row">
      ${zt({label:"Hollows to fill, by number",pointer:"/mesh/cavity_size_number",count:!0,optional:!0,hint:"Only where they differ in size."})}
      ${zt({label:"Direction that points up, if the mesh is tilted",pointer:"/mesh/straight_up",optional:!0,hint:"x,y,z, such as 0.0523,0,0.9986"})}
    </div>`}function ty(){let t=b(O(),"/mesh/on_board")===!0?"yes":"no";return r`<h4>Open below, and stood on a board?</h4>
    ${rt("Stood on a board",t,[["no","No"],["yes","Yes, the board closes it"]],e=>ht("/mesh/on_board",e==="yes"?!0:void 0))}`}function ey(){let t=b(O(),"/water/filled_to"),e=t===void 0?void 0:t==="brim"?"brim":b(t,"/depth")!==void 0?"depth":"below_brim",n=s=>ht("/water/filled_to",s==="brim"?"brim":{[s]:""}),o=b(O(),"/water/weighed_in"),i=e===void 0||e==="brim"?ln("/water/filled_to"):void 0;return r`<h3>Water weighed in it</h3>
    <p class="hint">
      The water alone, without the mould. It corrects the measures and cannot stand without them: it does not tell what
      a cavity holds to a pour line.
    </p>
    ${zt({label:"Temperature of the water",pointer:"/water/temperature",unit:"\xB0C"})}
    <h4>Filled to</h4>
    ${rt("Filled to",e,[["brim","The brim"],["depth","A depth"],["below_brim","Below the brim"]],n)}
    ${i?r`<p class="complaint">${i}</p>`:u}
    ${e==="depth"?zt({label:"Depth of the water",pointer:"/water/filled_to/depth",unit:"mm"}):u}
    ${e==="below_brim"?zt({label:"Water below the brim",pointer:"/water/filled_to/below_brim",unit:"mm"}):u}
    <h4>Weighed in</h4>
    ${rt("Weighed in",o===void 0?void 0:String(o),[["each cavity","One cavity"],["all cavities","The whole mould"]],s=>ht("/water/weighed_in",s))}
    <div class="row">
      ${Nt(O(),"/water/weighings").map((s,a)=>zt({label:`Water, round ${a+1}`,pointer:`/water/weighings/${a}`,unit:"g"},ny(a)))}
    </div>
    ${W().complaint?.field==="/water/weighings"?r`<p class="complaint">${W().complaint.line}</p>`:u}
    <button type="button" @click=${zm}>One more round</button>`}function zm(){let t=Nt(O(),"/water/weighings").length;ht(`/water/weighings/${t}`,""),queueMicrotask(()=>document.getElementById(`d-water-weighings-${t}`)?.focus())}var ny=t=>e=>{e.key==="Enter"&&(t+1===Nt(O(),"/water/weighings").length?zm():document.getElementById(`d-water-weighings-${t+1}`)?.focus())};function oy(){let t=(e,n)=>r`<button type="button" @click=${n}>${e}</button>`;return r`<div class="choice">
    ${Re("shape")?u:t("Add measures, as a check",()=>ht("/shape",ar("block")))}
    ${Re("shape")&&Re("mesh")?t("Leave the measures out",()=>ht("/shape",void 0)):u}
    ${Re("water")?t("Leave the water out",()=>ht("/water",void 0)):t("Add weighed water",Qw)}
  </div>`}function Jm(){let t=ss(O()).length;return t?[...Vo(O()),t===1?"the other number of a point":`the other numbers of ${t} points`]:Vo(O())}function iy(t){let e=String(O().name??"").trim(),n=ir(e),{open:o,answer:i,is_old:s,complaint:a}=W(),d=i&&!s&&!a&&!Jm().length&&e&&!n,c=o.shipped?"":o.file;return r`<button type="button" class="strong" ?disabled=${!d} @click=${()=>{Pi(t)}}>
      ${c?"Save the change":"Use this mould"}
    </button>
    ${c?r`<p class="aside">It stays in ${c}.</p>`:u}
    ${e?u:r`<p class="hint">Give it a name first.</p>`} ${Al(e,n)}
    ${a?r`<p class="alarm" role="status">${sy(a.field)}${a.line}</p>
            ${Ai(O(),a.keep,ht)}`:u}`}var Al=(t,e)=>e?r`<p class="complaint" role="status">
        Another mould is called ${t} already (${e}); give this one a name of its own.
      </p>`:u;function sy(t){let[,e]=/^\/shape\/points\/(\d+)/.exec(t)??[];if(e)return`Point ${Number(e)+1}: `;if(t==="/shape/points")return"";let n=qn(Di()).find(({name:s})=>t===`/shape/${s}`);if(n)return`${n.label}: `;let i=document.getElementById(`d${t.replaceAll("/","-")}`)?.labels?.[0]?.textContent?.trim();return i?`${i}: `:t?`${t.slice(1).replaceAll("/",", ").replaceAll("_"," ")}: `:""}var ry=200*2**20;async function Vm(t){if(!t)return;let e={name:t.name,share:0,sizes:[],is_measuring:!1,questions:0};if(h({mesh:e}),ht("/name",t.name.replace(/\.\w+$/,"")),t.size>ry){let n=`${t.name} has ${Math.ceil(t.size/1048576)} MiB`;return y(e,{complaint:`${n}; 200 MiB is the most: export it with fewer facets`})}try{let n=await Ku(t,o=>y(e,{share:o}));y(e,{share:1,upload:n.file}),await Qm(e)}catch(n){y(e,{complaint:n instanceof v?n.message:String(n)})}}async function Qm(t){let e=t.questions+1;y(t,{questions:e,is_measuring:!0,complaint:void 0,answer:void 0,inspection:void 0});let{upload:n,unit:o,role:i,up:s}=t;try{let a=await io({file:n,unit:o,role:i,up:s});e===t.questions&&y(t,{answer:a,is_measuring:!1})}catch(a){if(!(a instanceof v))throw a;if(e!==t.questions)return;let d=o?t.sizes:dy(a.complaint),c=d.length&&!o?void 0:K(a.complaint);y(t,{sizes:d,complaint:c,is_measuring:!1})}}async function ay(t){let{questions:e,upload:n,unit:o,up:i}=t;try{let s=await qu({file:n,unit:o,up:i});e===t.questions&&y(t,{inspection:s})}catch(s){if(!(s instanceof v))throw s;e===t.questions&&y(t,{complaint:K(s.complaint)})}}function ly(t){return t.inspection?r`<h4>Every defect of the mesh</h4>
    ${t.inspection.defects.length?r`<ul>
            ${t.inspection.defects.map(uy)}
          </ul>`:r`<p>None.</p>`}`:r`<button type="button" @click=${()=>{ay(t)}}>List every defect of the mesh</button>`}var uy=({text:t})=>r`<li>${t}</li>`;function dy({asks:t,choices:e=[]}){if(t!=="unit")return[];let n=o=>(o??[]).map(i=>T(i,2)).join(" \xD7 ");return e.flatMap(({unit:o,size:i})=>o?[[o,n(i)]]:[])}function Pl(t,e){y(t,e),Qm(t)}function Gm(t,e){let n=a=>{let d=a.target;Vm(d.files?.[0]),d.value=""},o=a=>{a.preventDefault(),Vm(a.dataTransfer?.files[0])},[i,s]=l.files?.imports_meshes?["STL, OBJ, PLY, OFF, 3MF, glTF or GLB",".stl,.obj,.ply,.off,.3mf,.gltf,.glb"]:["STL, the binary kind (for others brimwright-import is missing beside the program)",".stl"];return r` <div class="drop" @dragover=${a=>a.preventDefault()} @drop=${o}>
      <label for="mesh-file">Drop a mesh file here, or choose one: ${i}</label>
      <input id="mesh-file" type="file" accept=${s} @change=${n} />
    </div>
    ${l.mesh?cy(l.mesh,t,e):u}`}function cy(t,e,n){let i=(t.sizes.length?t.sizes:[["mm",""],["cm",""],["in",""]]).map(([s,a])=>[s,a?`${s}: ${a} ${s}`:s]);return r` <h3>${t.name}</h3>
    ${t.share<1&&!t.complaint?r`<label for="sent">Sending, ${Math.round(100*t.share)} %</label
            ><progress id="sent" max="1" .value=${t.share}></progress>`:u}
    ${t.is_measuring?r`<p role="status">Measuring ...</p>`:u}
    ${t.upload&&!kl.test(t.name)?r`<h4 id="unit-title">${t.unit?"Its unit":"Which size is it?"}</h4>
            ${rt("Unit of the file's numbers",t.unit,i,s=>Pl(t,{unit:s}))}`:u}
    ${t.complaint?r`<p class="alarm" role="alert">${t.complaint}</p>`:u}
    ${t.upload&&!t.is_measuring&&(t.complaint||t.answer)?ly(t):u}
    ${t.upload&&(t.unit||t.answer)?r`<h4>What it shows</h4>
            ${rt("Role",t.role??t.answer?.gauge.role,Rl,s=>Pl(t,{role:s}))}
            <h4>Which way is up</h4>
            ${rt("Up",t.up??"",Sl,s=>Pl(t,{up:s||void 0}))}`:u}
    ${t.answer?r`${bo(t.answer)} ${py(t,e,n)}`:u}`}var Ym=t=>t.answer.gauge.role!=="cavity"||t.answer.gauge.pockets.length>1;function py(t,e,n){let o=String(O().name??"").trim(),i=ir(o),s=o&&!i&&!t.is_keeping;return r`${xl()} ${Tl(Ym(t))} ${Al(o,i)}
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${()=>Km(t,n,e)}>
        Use this mould
      </button>
      <button type="button" ?disabled=${t.is_keeping} @click=${()=>Km(t,n)}>More settings</button>
    </div>
    ${t.is_keeping?r`<p role="status">Keeping it ...</p>`:u}
    <p class="hint">More is: water weighed in it, measures as a check, a mesh that leans or stands on a board.</p>`}async function Km(t,e,n){y(t,{is_keeping:!0});try{let o=my(t,await Qu(t.upload,hy(t.name)));if(!n||t.answer.gauge.pockets.length>1&&!await fy(o))return e(o);ro(o,"mesh",W().title),await Pi(n),y(t,{complaint:l.mould?.complaint?.line})}catch(o){y(t,{complaint:o instanceof v?o.message:String(o)})}y(t,{is_keeping:!1})}function my(t,e){let n={file:e,role:t.answer.gauge.role};t.unit&&(n.unit=t.unit),t.up&&(n.up=t.up);let{cavities:o,...i}=O();return{...i,...Ym(t)||o===void 0?{}:{cavities:o},mesh:n}}async function fy(t){try{return await He({file:"new.mould.json",mould:t}),!0}catch(e){if(e instanceof v&&e.status===422)return!1;throw e}}var hy=t=>Nn(t.replaceAll(/[^\w.-]+/g,"_"),l.files?.meshes??[]);var lr={measures:"By its inside measures",mesh:"From a mesh file",water:"By measures and weighed water"},Zm={schema:"brimwright.mould/2",name:"",cavities:1,owned:1};function Xm(t){be();let e={...Zm,shape:ar("block")};t==="mesh"?ro(Zm,"mesh",lr[t]):ro(t==="water"?{...e,water:vl}:e,"form",lr[t]),dr()}async function tf(t,e){be(),await vp(t,e),dr()}async function ur(t){be(),await kp(t),dr()}function gy(t){ro(t,"form","More about this mould"),dr()}function dr(){requestAnimationFrame(()=>document.querySelector("#mould-form")?.focus())}function ef(t){if(!l.mould)return;let{way:e,title:n}=l.mould;return r`<section aria-labelledby="mould-form">
    <h2 id="mould-form" tabindex="-1">${n}</h2>
    ${e==="mesh"?Gm(t,gy):Um(t)}
  </section>`}var Dl=()=>h({chosen_mould:void 0});function Mi(t,e){let n=l.files?.moulds.find(s=>s.file===t),o=l.catalogue.find(s=>s.path===t),i={file:t,name:n?.name||o?.name||t,note:n?.note??"",shipped:n?.shipped??!0,sell:"",told:e};h({chosen_mould:i}),_y(i),requestAnimationFrame(()=>document.querySelector("#mould-title")?.focus())}async function _y(t){try{y(t,{answer:await io({file:t.file})})}catch(e){y(t,{complaint:e instanceof v?e.message:String(e)})}}var $y=t=>l.files?.moulds.find(e=>e.file===t);function nf(t,e){let n=()=>e(async()=>{await tf(t.file,t.shipped),Dl()});return r`<section aria-labelledby="mould-title">
    <h2 id="mould-title" tabindex="-1">
      ${t.name} <small>${t.shipped?"built-in":`your own, ${t.file}`}</small>
    </h2>
    ${t.told?r`<p role="status">${t.told}</p>`:u} ${t.note?r`<p>${t.note}</p>`:u}
    ${Xs($y(t.file))}
    ${t.complaint?r`<p class="alarm" role="alert">It cannot be measured: ${t.complaint}</p>`:u}
    <div class="beside">
      <div>
        ${t.answer?bo(t.answer):t.complaint?u:r`<p role="status">Measuring ...</p>`}
        <button type="button" @click=${n}>${t.shipped?"Change a copy of it":"Change it"}</button>
      </div>
      ${t.complaint?u:by(t,e)}
    </div>
  </section>`}function by(t,e){let n=Ys(t.sell),o=i=>()=>e(()=>Ss({mould:t.file,name:t.name,formula:i,sell:n}));return r`<div>
    <h3>Make a run with it: how many, and which base?</h3>
    ${Zs("mould-sell",t.sell,i=>y(t,{sell:i}))}
    ${n?u:r`<p class="hint">A base can be chosen once you say how many.</p>`}
    <ul class="cards">
      ${(l.files?.formulas??[]).map(i=>r`<li>
            <button type="button" ?disabled=${!t.answer||!n} @click=${o(i.file)}>
              <b>${i.name}</b><span>${i.note||i.file}</span>
            </button>
          </li>`)}
    </ul>
  </div>`}function Oi(){let{view:t,run:e,formula_of:n,formulas:o,mould:i,chosen_mould:s}=l;if(t!=="reading")return Pe(t)?{name:t,file:e.file,of:e}:t==="moulds"&&i?{name:"describing",file:i.open.id,of:i}:t==="moulds"&&s?{name:"chosen",file:s.file,of:s}:t!=="formula"?{name:t}:n==="apart"?{name:"formula",file:o.apart?.file,of:o.apart}:{name:Io[n],file:e.file,of:e}}async function sf({name:t,file:e}){if(!(!(t===Io.apart&&l.formulas.apart?.file===e)&&!await As()))try{await wy(t,e)}catch(o){if(!(o instanceof v||o instanceof SyntaxError))throw o;h({view:"runs",list_complaint:o.message})}}async function wy(t,e=""){let n=t;if(Pe(n))return of(e,n);let o=["pour","pipe"].find(i=>Io[i]===t);if(o)return await of(e,"formula"),Gt(o);if(t===Io.apart)return ci(e);await yy(t,e)}async function of(t,e){t===l.run.file||!t?h({view:l.run.file?e:"runs",typed:void 0}):await Ye(t,e)}async function yy(t,e){let n=t;Dl(),be(),h({view:ee(n)?n:"moulds",list_complaint:"",list_told:"",list_open:void 0,fault:void 0});let o=cs(Ft).find(i=>i.id===e);t==="describing"&&o&&await ur(o),t==="chosen"&&Mi(e),vy()}async function vy(){try{h({files:await Wn()}),Ts()}catch(t){if(!(t instanceof v))throw t;h({list_complaint:t.message})}}var Jt={id:""},St,Ml=!1,Fl=new Map,cr=JSON.parse(sessionStorage.getItem("left")??"{}");function af(){let t=Oi();Ml||!t||St&&fe(St)===fe(t)||(pr(),lf(t))}function lf(t){let e=!St||St.name===t.name&&St.of!==void 0&&St.of===t.of;if(St=t,e)return yo();Jt={id:crypto.randomUUID(),before:location.hash},Fl.set(Jt.id,t.of),history.pushState(Jt,"",fe(t)),requestAnimationFrame(xy)}function yo(){St&&(Jt.id||(Jt={id:crypto.randomUUID()}),Fl.set(Jt.id,St.of),history.replaceState(Jt,"",fe(St)))}var ky="button, input, select, summary, a[href], [tabindex]",Ol=t=>t.id||(t.getAttribute("aria-label")??t.textContent).trim(),uf=t=>[...document.querySelectorAll(`#main :is(${ky})`)].filter(e=>Ol(e)===t);function pr(){let t=document.activeElement;!t?.closest("#main")||t.id==="main"?cr[Jt.id]={scroll:scrollY}:cr[Jt.id]={scroll:scrollY,words:Ol(t),nth:uf(Ol(t)).indexOf(t)}}function xy(){scrollTo(0,0),document.activeElement?.closest("#main")||df()}function df(){let t=document.querySelector("#main h1");t&&(t.tabIndex=-1,t.focus({preventScroll:!0}))}function cf(){let{scroll:t,words:e,nth:n=0}=cr[Jt.id]??{scroll:0},o=e===void 0?void 0:uf(e)[n];o?o.focus({preventScroll:!0}):df(),scrollTo(0,t)}var vo=t=>pf({name:t,file:Pe(t)?l.run.file:void 0});async function pf(t){pr(),await Cl(t,()=>{let e=Oi();e&&!(St&&fe(St)===fe(e))&&lf(e)})}async function Cl(t,e){Ml=!0;try{await sf(t)}finally{Ml=!1,e()}}function mf(t){Jt.before===fe(t)?history.back():pf(t)}var rf=Promise.resolve();function Ty(t,e){pr();let n=()=>history.state?.id!==t?.id;rf=rf.then(async()=>{if(!e)return yo();if(n())return;let o=t?Fl.get(t.id):void 0,i=[l.run,l.formulas.apart].find(s=>s&&s===o);await Cl(i?{...e,file:i.file}:e,()=>{St=Oi(),!n()&&(Jt=t??{id:crypto.randomUUID()},yo(),requestAnimationFrame(cf))})})}function ff(){history.scrollRestoration="manual",addEventListener("popstate",t=>{Fu()||Ty(t.state,Or(location.hash))}),addEventListener("pagehide",()=>{pr(),sessionStorage.setItem("left",JSON.stringify(cr))})}async function hf(){let t=Or(location.hash);t&&(Jt=history.state??{id:""}),await fp(Zu(t)),t&&Ry(t)&&await Cl(t,()=>{St=Oi(),yo(),requestAnimationFrame(cf)}),await hp()}var Ry=t=>!St||fe(St)===fe(t);function ko(t=l.plan?"The figures below are out of date.":"No figures yet."){let e=Vs()?void 0:l.complaint;return r`<div class="complaints" role="status">
      ${e?r`<p class="alarm">
                <strong>${t}</strong>
                ${Fi(e.field)}${K(e)}
              </p>
              ${e.is_fault?r`<button type="button" @click=${El}>Ask again</button>`:u}
              ${ke("run")?Ai(l.run.now,e.keep,(n,o)=>N("run",n,o)):Ll(e)}
              ${Sy()?r`<button type="button" @click=${Bl}>Go to the field</button>`:u}`:u}
    </div>
    ${bi()}`}function Ll({keep:t}){let{studio:e}=l.beside;return e&&ke("studio")?Ai(e.now,t,(n,o)=>N("studio",n,o)):u}function Fi(t){let e=t.split("/").slice(1).map(n=>/^\d+$/.test(n)?` ${Number(n)+1}`:`, ${n.replaceAll("_"," ")}`);return e.length?`${e.join("").slice(2)}: `:""}function El(){et(),l.run.failed&&se()}function Sy(){if(gf())return!0;let t=Fn();return t?document.activeElement!==t:Ay()}var Ay=()=>l.view!=="set-up"&&ke("run")&&l.complaint!==void 0&&l.complaint.field!=="",gf=()=>["pour","pipe"].find(t=>l.complaint?.file&&l.complaint.field&&ke(t));function Bl(){let t=Fn(),e=gf();if(t)return go(t);e?Gt(e):vo("set-up"),Py(()=>go(Fn()))}function Py(t){requestAnimationFrame(()=>requestAnimationFrame(t))}var _f=()=>[...ws().map(t=>co(t)),...bs().map(po)];function $f(){let t=l.formula_of,e=l.formulas[t];if(!e)return r`<h1 id="formula-title" tabindex="-1">Formula</h1>
      ${_f()}${ko()}
      <p>Reading the formula ...</p>
      ${Il(t)}`;let n=l.plan&&ao(l.plan),o=t==="pipe"?n?.whippings[0]:n?.pour;return r`${_f()}
    <h1 id="formula-title" tabindex="-1">${String(e.now.name||"Unnamed formula")}</h1>
    <p class="aside">${Dy(t)}</p>
    <div class="choice">${Il(t)}${t==="apart"?My():u}</div>
    ${tr(l.files?.formulas.find(i=>i.file===e.file))} ${Oy(t,o,n)} ${wf(t)}
    ${tl(t)} ${el(t,o)} ${ol(t)} ${Ka(t)}
    <div class="choice">${Il(t)}</div>`}var bf=t=>[wf(t),tl(t),el(t,void 0),ol(t),Ka(t)],Wl=()=>String(l.run.now.name??l.run.file);function Dy(t){let e=l.formulas[t],n=e.shipped?" Built-in: your first change is saved as a copy.":"",o=l.formulas.pour===e&&l.formulas.pipe===e;return t==="apart"?`Opened on its own; the figures are for a base of "${Wl()}".${n}`:o?`Base and topping of "${Wl()}" are both made of it.${n}`:`${t==="pour"?"Base":"Topping"} of "${Wl()}".${n}`}function Il(t){let e=t==="apart";return r`<button type="button" class="strong" @click=${()=>mf(e?{name:"formulas"}:{name:l.came_from,file:l.run.file})}>
    ${e?"Close the formula":"Back to the run"}
  </button>`}function My(){return r`<button type="button" @click=${()=>{Da("pour")}}>Use it as the base</button> ${Ut()?r`<button type="button" @click=${()=>{Da("pipe")}}>Use it as the topping</button>`:u}`}function Oy(t,e,n){return r`<section class="strip" aria-label="What comes of it">
    ${e&&n?r`<dl>
            ${[...Fy(t,n),...Cy(t,e)].map(([o,i,s])=>r`<div class=${l.is_old?"old":""}>
                  <dt>${o} ${s?Xe(s):u}</dt>
                  <dd><b>${i}</b></dd>
                </div>`)}
          </dl>`:u}
    ${Ly(t)}
  </section>`}function Fy(t,e){let n=t==="pipe"?Ia(e,e.whippings[0]):"";return n?[["For one whipping",n]]:xt(e.whole)?[["For one batch",we(e.whole,e.batch)]]:[]}function Cy(t,e){let n=Ze(t).length?" \u26A0":"";return[["Fats",S(C(l.units,e.fats_g))],["Superfat as weighed",`${Yt(e.superfat_percent.effective)}${n}`,"superfat_as_weighed"],...Ls(e).map(({one:o})=>[o.name,S(Dn(l.units,o))])]}function Ly(t){let e=Vs()?void 0:l.complaint;if(!e)return r`<div role="status"></div>
      ${bi()}`;let n=ke(t),o=n&&e.field!==""&&document.activeElement!==Fn();return r`<div role="status" class="asks">
      <p class="alarm">
        <strong>${l.plan?"These figures are out of date.":"No figures yet."}</strong>
        ${n?"":"Not about this formula: "}${Fi(e.field)}${K(e)}
      </p>
      ${e.is_fault?r`<button type="button" @click=${El}>Ask again</button>`:u}
      ${o?r`<button type="button" @click=${()=>Fn()?.focus()}>Go to the field</button>`:u}
    </div>
    ${bi()}`}function wf(t){return r`<section class="card" aria-label="Name">
    ${f({label:"Name",of:t,at:"/name",wide:!0})}
    ${P({of:t,name:"note",pointers:["/note"],summary:"Your note",body:()=>f({label:"Note",of:t,at:"/note",optional:!0,wide:!0})})}
  </section>`}var yf=(t,e,n)=>{let o=new Map;for(let i=e;i<=n;i++)o.set(t[i],i);return o},mr=Es(class extends mo{constructor(t){if(super(t),t.type!==Ee.CHILD)throw Error("repeat() can only be used in text expressions")}dt(t,e,n){let o;n===void 0?n=e:e!==void 0&&(o=e);let i=[],s=[],a=0;for(let d of t)i[a]=o?o(d,a):a,s[a]=n(d,a),a++;return{values:s,keys:i}}render(t,e,n){return this.dt(t,e,n).values}update(t,[e,n,o]){let i=Kp(t),{values:s,keys:a}=this.dt(e,n,o);if(!Array.isArray(i))return this.ut=a,s;let d=this.ut??=[],c=[],p,m,_=0,$=i.length-1,w=0,R=s.length-1;for(;_<=$&&w<=R;)if(i[_]===null)_++;else if(i[$]===null)$--;else if(d[_]===a[w])c[w]=nn(i[_],s[w]),_++,w++;else if(d[$]===a[R])c[R]=nn(i[$],s[R]),$--,R--;else if(d[_]===a[R])c[R]=nn(i[_],s[R]),fo(t,c[R+1],i[_]),_++,R--;else if(d[$]===a[w])c[w]=nn(i[$],s[w]),fo(t,i[_],i[$]),$--,w++;else if(p===void 0&&(p=yf(a,w,R),m=yf(d,_,$)),p.has(d[_]))if(p.has(d[$])){let Y=m.get(a[w]),Ht=Y!==void 0?i[Y]:null;if(Ht===null){let _n=fo(t,i[_]);nn(_n,s[w]),c[w]=_n}else c[w]=nn(Ht,s[w]),fo(t,i[_],Ht),i[Y]=null;w++}else Ws(i[$]),$--;else Ws(i[_]),_++;for(;w<=R;){let Y=fo(t,c[R+1]);nn(Y,s[w]),c[w++]=Y}for(;_<=$;){let Y=i[_++];Y!==null&&Ws(Y)}return this.ut=a,Bs(t,c),Mt}});async function Wt(t){h({list_complaint:""});try{await t()}catch(e){h({list_complaint:e instanceof Error?e.message:String(e)}),e instanceof v&&await Ke().catch(()=>{})}}var Hl=()=>{Wt(uc)};function xo(t){return r`<h1 tabindex="-1">${t}</h1>
    ${l.list_complaint?r`<p class="alarm" role="alert">${l.list_complaint}</p>`:u}
    ${l.list_told&&Zo()?r`<p class="told" role="status">
            ${l.list_told} <button type="button" @click=${Hl}>Undo</button>
          </p>`:u}
    ${(l.files?.cut??[]).map(e=>r`<p class="alarm">
          More lies in ${e.folder} than is looked at: ${e.looked_at} files and folders. Some of your runs, moulds or
          formulas may be missing below; keep them in a folder of their own, and start brimwright there.
        </p>`)}`}var vf=new Map,kf=Promise.resolve();function xf(t,e=""){let n=`${t}
${e}`,o=vf.get(n);return o||(o=kf.then(()=>Ey(t)),kf=o,vf.set(n,o)),o}async function Ey(t){try{let e=await je({kind:"glb",gauge:{file:t}}),n=oo(await e.arrayBuffer());return ri(n.find(o=>o.name==="cavity")??n[0])}catch(e){if(e instanceof v)return;throw e}}var jl=class extends HTMLElement{static observedAttributes=["file","changed"];#n;#t=new IntersectionObserver(([e])=>e.isIntersecting&&this.#e(),{rootMargin:"200px"});connectedCallback(){this.#t.observe(this)}disconnectedCallback(){this.#t.disconnect()}attributeChangedCallback(){this.#t.disconnect(),this.isConnected&&this.#t.observe(this)}#e(){this.#t.disconnect();let e=this.getAttribute("file")??"";requestIdleCallback(()=>{xf(e,this.getAttribute("changed")??"").then(n=>{e===this.getAttribute("file")&&(this.#n=n,this.#i())})},{timeout:1e3})}#i(){let e=this.#n;if(!e)return void he(u,this);let{left:n,right:o,floor:i,brim:s,loops:a}=e,d=.04*Math.max(o-n,s-i),c=[n-d,-s-d,o-n+2*d,s-i+2*d];he(r`<svg viewBox=${c.join(" ")} aria-hidden="true">
        <path class="shaded pour" fill-rule="evenodd" d=${si(a)} />
      </svg>`,this)}};customElements.define("mould-picture",jl);var En=(t,e)=>r`<ul class="cards">
    ${mr(t,({file:n})=>n,e)}
  </ul>`;function To(t){let{one:e,facts:n,picture:o,open:i}=t,s=l.list_open?.file===e.file?l.list_open:void 0,a=e.name||e.file;return r`<li class="file">
    <button type="button" class="open" @click=${()=>{Wt(i)}}>
      ${o?r`<mould-picture file=${o}></mould-picture>`:u}
      <span class="told-of"
        ><b>${a}</b>${n.length?r`<span>${n.join(", ")}</span>`:u}
        <span class="file-name">${e.shipped?"built-in":e.file}</span></span
      >
    </button>
    <button
      type="button"
      class="dots"
      aria-expanded=${s?"true":"false"}
      aria-label="Name, note, copy or remove: ${a}"
      @click=${()=>By(t,!s)}
    >
      <span aria-hidden="true">⋯</span>
    </button>
    ${s?Wy(t,s):u}
  </li>`}function By({one:t},e){let{file:n,name:o,note:i}=t;h({list_open:e?{file:n,name:o,note:i,stem:Xo(n)}:void 0})}function Wy(t,e){let{kind:n,one:o}=t,i=r`<button type="button" @click=${()=>{Wt(()=>Hy(n,o))}}>Copy</button>`;if(o.shipped)return r`<div class="acts"><div class="choice">${i}</div></div>`;let s=["name","note"].every(d=>o[d]===e[d])&&Xo(o.file)===e.stem,a=()=>{Wt(()=>jy(t,e))};return r`<div class="acts">
    ${Xs(o)} ${Nl("Name",e,"name")} ${Nl("Note",e,"note")}
    ${Nl("Name of the file",e,"stem")}
    <div class="choice">
      <button
        type="button"
        class="strong"
        ?disabled=${s||!e.name.trim()||!e.stem.trim()}
        @click=${a}
      >
        Save
      </button>
      ${i}
      <button type="button" @click=${()=>{Wt(()=>Tf(o,e,!1))}}>Remove</button>
    </div>
    ${e.used_by?Iy(o,e):u}
  </div>`}function Nl(t,e,n){let o=`list-${n}`,i=s=>y(e,{[n]:s.target.value});return r`<div class="field">
    <label for=${o}>${t}</label>
    <input id=${o} .value=${j(e[n])} @input=${i} autocomplete="off" spellcheck="false" />
  </div>`}function Iy(t,e){return r`<div role="alert">
    <p class="alarm">${e.used_by.join(", ")} cannot be planned without it.</p>
    <button type="button" @click=${()=>{Wt(()=>Tf(t,e,!0))}}>Remove it even so</button>
  </div>`}async function Hy(t,e){let n=await dc(t,e),o=l.files?.[t.list].find(i=>i.file===n);o&&(h({list_open:{file:n,name:o.name,note:o.note,stem:Xo(n)}}),requestAnimationFrame(()=>document.getElementById("list-name")?.select()))}async function jy({kind:t,one:e},{name:n,note:o,stem:i}){await mc(t,e,{name:n.trim(),note:o.trim(),stem:i.trim()}),h({list_open:void 0})}async function Tf(t,e,n){let o=t.used_by??[];if(o.length&&!n)return y(e,{used_by:o});try{await fc(t,n),h({list_open:void 0})}catch(i){let s=i instanceof v?i.answer.used_by:void 0;if(!s)throw i;y(e,{used_by:s})}}var ql=t=>y(l.new_formula,t);function Rf(){let{name:t,copied:e}=l.new_formula,n=[...l.files?.formulas??[]].sort((i,s)=>Number(i.shipped)-Number(s.shipped)),o=i=>()=>Wt(async()=>{await i(t.trim()),ql({name:"",copied:""})});return r`${xo("Formulas")}
    <section aria-label="Formulas">
      ${En(n,Ny)}
      <h2>A new formula</h2>
      <div class="row">
        <div class="field">
          <label for="new-formula">What you call it</label>
          <input
            id="new-formula"
            .value=${j(t)}
            @input=${i=>ql({name:i.target.value})}
            autocomplete="off"
            spellcheck="false"
          />
        </div>
        <button type="button" ?disabled=${!t.trim()} @click=${o(_p)}>Begin from blank</button>
      </div>
      <div class="row">
        <div class="field choose">
          <label for="copied-formula">Or as a copy of</label>
          <select
            id="copied-formula"
            @change=${i=>ql({copied:i.target.value})}
          >
            <option value="" .selected=${j(e==="")}>choose ...</option>
            ${n.map(i=>r`<option value=${i.file} .selected=${j(i.file===e)}>${i.name||i.file}</option>`)}
          </select>
        </div>
        <button
          type="button"
          ?disabled=${!t.trim()||!e}
          @click=${o(i=>$p(e,i))}
        >
          Make the copy
        </button>
      </div>
      ${t.trim()?"":r`<p class="hint">A new formula needs a name first.</p>`}
    </section>`}function Ny(t){let e=t.changed?[`changed ${uo(t.changed)}`]:[];return To({kind:Un,one:t,facts:e,open:()=>ci(t.file)})}function qy(t){be(),Mi(t,`Saved in ${t}.`)}function Sf(){let{chosen_mould:t}=l;return r`${xo("Moulds")}
  ${t?nf(t,Wt):ef(qy)??r`${Vy()} ${Uy()}`}`}function Uy(){let t=(l.files?.moulds??[]).filter(n=>!n.shipped),e=l.catalogue.map(n=>({file:n.path,name:n.name,note:"",shipped:!0}));return r`<section aria-labelledby="moulds-title">
    <h2 id="moulds-title">Moulds: start a run with one, or change it</h2>
    ${En([...t,...e],zy)}
  </section>`}function zy(t){let e=t.shipped?Jy(t.file):Gy(t.file),n=()=>Promise.resolve(Mi(t.file));return To({kind:Ft,one:t,facts:e,picture:t.file,open:n})}var Jy=t=>l.catalogue.filter(e=>e.path===t).map(e=>`${S(wt(l.units,e.brimful_ml))}, ${ct(e.cavities,"cavity","cavities")}; ${e.description}`);function Vy(){return r`<section aria-labelledby="own-title">
    <h2 id="own-title">A new mould of your own</h2>
    ${Ky()}
    <div class="choice">
      ${Object.entries(lr).map(([t,e])=>r`<button type="button" @click=${()=>Xm(t)}>${e}</button>`)}
    </div>
  </section>`}function Ky(){return cs(Ft).map(t=>{let e=String(dt(t.text)?.name??"").trim()||Qy(t)||"a mould without a name yet";return r`<div class="banner">
      <p>Your unsaved mould <b>${e}</b> is still here.</p>
      <div class="choice">
        <button type="button" @click=${()=>Wt(()=>ur(t))}>Continue</button>
        <button type="button" @click=${()=>{ze(Ft,t.id),Q()}}>Discard it</button>
      </div>
    </div>`})}var Qy=({file:t})=>l.files?.moulds.find(e=>e.file===t)?.name;function Gy(t){let e=Zc(t);return e?"complaint"in e?[`it cannot be measured: ${e.complaint}`]:[S(wt(l.units,e.brimful_ml)),ct(e.cavities,"cavity","cavities")]:["measuring ..."]}function Af(){let t=Yy();if(t)return t;let{run:e}=l,n=l.formula_of==="apart"||!(V(e)||e.theirs||e.failed);return l.view==="formula"&&n?Zy():e.theirs?Mf(e):e.failed?zl(`Not saved: ${e.failed}`):V(e)?Df:Ul(e.shipped?Pf:`Saved in ${e.file}`)}var Pf="Built-in example: your first change is saved as a copy.",Df={words:"Saving ...",is_kept:!1},Ul=t=>({words:t,is_kept:!0}),zl=t=>({words:t,is_kept:!1,is_failed:!0}),Mf=t=>zl(Rn(t)?`Not saved: ${t.file} was deleted outside this page. Save it again, or leave it deleted.`:`Not saved: ${t.file} was changed outside this page. Choose which version to keep.`);function Yy(){let t=l.formulas.apart?"apart":"run",e=Fe(t);if(e)return Mf(e);if((t==="apart"?[l.formulas.apart]:[l.formulas.pour,l.formulas.pipe]).some(o=>o&&V(o)))return l.complaint?.file===""?zl(`Not saved: ${l.complaint.problem}`):Df}function Zy(){let t=l.formulas[l.formula_of];return Ul(t?t.shipped?Pf:`Saved in ${t.file}`:"")}function fr(){let{view:t,mould:e,past:n,future:o}=l;return t==="moulds"&&e?Of(e,xp,Tp):ee(t)?{undo:Zo()&&Hl}:Of({past:n,future:o},fs,Zd)}var Of=({past:t,future:e},n,o)=>({undo:t.length?n:void 0,redo:e.length?o:void 0});var Ff={runs:"Runs",formulas:"Formulas",moulds:"Moulds"},Xy={weigh:["Weigh","M4 20h16M6 20l2-9h8l2 9M12 11V7M7 7h10M10 16h4"],"set-up":["Set up","M4 7h9m4 0h3M4 17h3m4 0h9M15 4.5v5M9 14.5v5"],watch:["Cautions","M12 4l9 16H3zM12 10v5M12 17v1"],money:["Piece","M4 8h16v10H4zM4 8l3-3h10l3 3M9 13h6"],mould:["Mould","M5 6h3l1 12h6l1-12h3M9.5 12h5"],print:["Print","M7 9V4h10v5M5 9h14v8h-3M8 17H5V9M8 14h8v6H8z"]},tv="M9 6l-5 5 5 5M4 11h9a6 6 0 0 1 6 6v2",ev="M15 6l5 5-5 5M20 11h-9a6 6 0 0 0-6 6v2",Jl=t=>r`<svg class="sign" viewBox="0 0 24 24" aria-hidden="true">${F`<path d=${t} />`}</svg>`;function Cf(){let t=l.view==="reading";return r`<header class="rail">
    <div class="rail-top">
      <p class="mark" aria-hidden="true">▽ Brimwright</p>
      ${t?u:r`<nav class="rail-lists" aria-label="Lists">
                ${Gu.map(e=>Lf(e,Ff[e],r`${Ff[e]}`))}
              </nav>
              ${ov()}`}
    </div>
    ${t?u:iv()}
  </header>`}var nv={metric:r`g<span class="wide">, mm</span>`,both:r`both`,us:r`oz<span class="wide">, in</span>`};function ov(){let t=e=>()=>{h({units:e}),localStorage.setItem("units",e)};return r`<div class="tools units" role="group" aria-label="Units">
    ${["metric","both","us"].map(e=>r`<button type="button" aria-pressed=${l.units===e?"true":"false"} @click=${t(e)}>
          ${nv[e]}
        </button>`)}
  </div>`}function iv(){let{undo:t,redo:e}=fr();return r`<div class="bar">
    ${l.run.file?sv():u}
    <div class="tools steps" role="group" aria-label="Steps">
      <button type="button" ?disabled=${!t} @click=${t}>${Jl(tv)}<span>Undo</span></button>
      <button type="button" ?disabled=${!e} @click=${e}>${Jl(ev)}<span>Redo</span></button>
    </div>
    ${l.run.file?uv():u}
  </div>`}function sv(){return r`<nav aria-label="Views of this run">
    <p class="rail-name">${String(l.run.now.name??l.run.file)}</p>
    <div class="rail-views">${Yu.map(rv)}</div>
  </nav>`}function rv(t){let[e,n]=Xy[t],o=av(t);return Lf(t,o?`${e}, ${o.words}`:e,r`${Jl(n)}<span>${e}</span>${o?r`<small class=${o.is_danger?"danger":""}
            ><span aria-hidden="true">${o.sign}</span> ${o.words}</small
          >`:u}`)}function av(t){if(t==="watch"&&Dp())return{sign:"\u26A0",words:"Danger",is_danger:!0};if(t==="set-up"&&lv())return{sign:"\u25CB",words:"missing"}}var lv=()=>l.complaint!==void 0&&!l.complaint.is_fault;function Lf(t,e,n){let o=l.view===t;return r`<button
    type="button"
    aria-label=${e}
    aria-current=${o?"page":u}
    @click=${()=>{vo(t)}}
  >
    ${n}
  </button>`}function uv(){let{words:t,is_kept:e,is_failed:n}=Af();return r`<p class="saving ${n?"failed":e?"kept":""}" role="status">${t}</p>`}var dv=300,cv=1e3;function hr(){let{quoted:t,plan:e,quote_wish:n,is_old:o}=l,i=t?.of===e&&t?.wish===n;!i&&!o&&pv();let s=i?t?.complaint:void 0;return{quote:t?.quote,complaint:s,is_old:o||!i||s!==void 0}}function Kl(){l.quoted&&h({quoted:{...l.quoted,of:void 0}})}var Ci,Vl=!1;function pv(){let{plan:t,quote_wish:e}=l;Vl||Ci?.of===t&&Ci?.wish===e||(window.clearTimeout(Ci?.timer),Ci={of:t,wish:e,timer:window.setTimeout(()=>{hv()},l.quoted?dv:0)})}var Ef=t=>t.split(/[\s,;]+|\band\b/).filter(Boolean).join(",");function mv(t,{numbers:e="",by:n,figure:o}){let i=Ef(e);return{...t,...i&&{sell:i},...n&&o.trim()&&{[n]:o}}}function fv(t,{numbers:e=""}){return t.field==="/sell"&&Ef(e)?{...t,file:"",field:"sell"}:t}async function hv(){Ci=void 0;let{run:t,plan:e,planned:n,quote_wish:o,is_old:i}=l;if(!(!e||!n||i)){Vl=!0;try{let s=await Nu(mv(n,o));t===l.run&&h({quoted:{of:e,wish:o,quote:s}})}catch(s){if(!(s instanceof v))throw s;if(t!==l.run)return;let a=fv(s.complaint,o);h({quoted:{of:e,wish:o,quote:l.quoted?.quote,complaint:a}}),s.may_pass&&window.setTimeout(Kl,cv)}finally{Vl=!1}}}var Se={run:"/money/currency",studio:"/currency"},gr={run:"/money/prices",studio:"/prices"},Ro=()=>Te(Se)!==void 0;function So(){let[t,e]=[g("run",Se.run),g("studio",Se.studio)];return t!==void 0&&e!==void 0&&t!==e?[]:[Se,gr]}var _r=()=>D("studio",Se.studio)||String(Te(Se)??"");function Wf(t,e){let{numbers:n,currency:o,has_tax:i}=t,s=(a,d,c="")=>r`<tr class=${c}>
      <th scope="row">${a}</th>
      ${n.map(p=>r`<td><b>${d(p)}</b></td>`)}
    </tr>`;return r`<p class="aside">Money in ${o}${i?"; costs are without tax":""}.</p>
    <div class="side-by-side" role="region" tabindex="0" aria-label="Costs and prices, side by side">
      <table class="quote-table ${e?"old":""}">
        <thead>
          <tr>
            <th scope="col">Pieces to sell</th>
            ${n.map(a=>r`<th scope="col"><b>${a.sell}</b></th>`)}
          </tr>
        </thead>
        <tbody>
          ${s("to make",a=>a.make)} ${s("fillings",a=>a.fillings)}
          ${s("batches",a=>a.batches)}
          ${n.some(a=>a.to_stock)?s("beyond those, at no cost",a=>a.to_stock):u}
        </tbody>
        <tbody>
          ${If("A piece costs",n)} ${gv(t).map(a=>$v(t,a,s))}
          ${s("Cost of a piece",a=>a.cost_each,"sum-of")} ${s("The whole run",a=>a.cost)}
        </tbody>
        <tbody>
          ${bv(t,s)}
        </tbody>
        ${jf(t).map((a,d)=>xv(t,a,d===0,s))}
      </table>
    </div>`}var If=(t,e)=>r`<tr class="group">
    <th scope="rowgroup" colspan=${e.length+1}>${t}</th>
  </tr>`,gv=({numbers:t})=>[...new Set(t.flatMap(({parts:e})=>e.map(({part:n})=>n)))];function _v({parts:t,items:e},n){let o=t.find(i=>i.part===n);return o?e.some(i=>i.part===n&&i.cost!==null)?o.each:"unpriced":"\u2013"}var $v=(t,e,n)=>Hf(t,e,n,o=>_v(o,e),o=>vv(o,e)),bv=(t,e)=>Hf(t,"To lay out now, in whole packs",e,({cash:n})=>n?.total??"nothing",({sell:n,cash:o})=>r`${wv(n,o)} ${yv(o)}`);function Hf(t,e,n,o,i){let s=`quote ${e}`,a=l.open.has(s),d=`quote-${e.replaceAll(/\W/g,"-")}`,c=r`<button
    type="button"
    class="line"
    aria-expanded=${a?"true":"false"}
    aria-controls=${a?d:u}
    @click=${()=>Kt("open",s)}
  >
    ${e}<span class="how" aria-hidden="true">${a?"\u2013":"="}</span>
  </button>`;return r`${n(c,o)}
  ${a?r`<tr class="opened">
          <td colspan=${t.numbers.length+1} id=${d}>${t.numbers.map(i)}</td>
        </tr>`:u}`}var Ql=(t,e)=>r`<div class="sum">
    <table>
      <caption>
        ${t}
      </caption>
      <tbody>
        ${e}
      </tbody>
    </table>
  </div>`,wv=(t,e)=>r`${Ql(`Packs to buy, ${t} to sell`,(e?.packs??[]).map(({shown_as:n,count:o,holds:i,sum:s,seller:a})=>r`<tr>
          <th scope="row">${n}</th>
          <td>${s}</td>
          <td>${o} × ${i}${a?`, ${a}`:""}</td>
        </tr>`))}
  ${e?.unpriced.length?r`<p class="alarm">No pack is listed, and not in the sum: ${e.unpriced.join(", ")}.</p>`:u}
  ${e&&!e.proved_cheapest?r`<p class="hint">Not proved to be the least that is possible.</p>`:u}`,yv=t=>Ql("Left of them when all is made",(t?.left??[]).map(({shown_as:e,left:n})=>r`<tr>
          <th scope="row">${e}</th>
          <td>${n}</td>
        </tr>`));function vv({sell:t,items:e},n){return Ql(`${n} of the whole run, ${t} to sell`,e.filter(o=>o.part===n).map(({name:o,amount:i,cost:s,how:a})=>r`<tr>
            <th scope="row">${o}</th>
            <td>${s??"unpriced"}</td>
            <td>${a||i}</td>
          </tr>`))}function jf({numbers:t}){let e=t.flatMap(({prices:n})=>n);return e.filter((n,o)=>e.findIndex(({way:i})=>i===n.way)===o)}var Bf=t=>`${T(t,1)} %`;function kv(t){return"margin_percent"in t?`margin ${T(t.margin_percent,2)} %`:"markup_percent"in t?`markup ${T(t.markup_percent,2)} %`:"price as set"}function xv({numbers:t,has_tax:e},{way:n,by:o,ask:i,with_tax:s},a,d){let c=i===s,p=_=>$=>{let w=$.prices.find(R=>R.way===n);return w?_(w):"\u2013"},m=(_,$)=>a?r`${$} ${Xe(_)}`:$;return r`<tbody>
    ${If(r`<span class="way">${n}</span>, ${kv(o)}`,t)}
    ${d(e?c?"Ask, with tax":"Ask, without tax":"Ask",p(Tv),"ask")}
    ${e?d("tax in it",p(({tax:_})=>c?_:"none")):u}
    ${d("fees",p(({fees:_})=>_))}
    ${d("left for you",p(({profit:_})=>_))}
    ${d(m("margin","margin, of the price"),p(_=>Bf(_.margin_percent)))}
    ${d(m("markup","markup, on the cost"),p(_=>Bf(_.markup_percent)))}
  </tbody>`}var Tv=({ask:t,is_below_cost:e})=>e?r`<span class="below">${t}<small>below cost</small></span>`:t;function Nf(t){let e=n=>t.numbers.filter(({prices:o})=>o.some(i=>i.way===n&&i.is_below_cost));return jf(t).map(({way:n})=>({way:n,sold:e(n).map(({sell:o})=>o)})).filter(({sold:n})=>n.length).map(({way:n,sold:o})=>r`<p class="alarm below-cost">
          <strong><span aria-hidden="true">⚠</span> Below cost</strong> ${n}: each piece sold loses money, at
          ${o.join(", ")} to sell.
        </p>`)}function qf(){return r`<section class="piece quote" aria-labelledby="quote-title">
    <h2 id="quote-title">What it costs, what to ask</h2>
    ${Ro()?Sv():Rv()}
  </section>`}var Rv=()=>r`<p class="hint">Once it is known what you paid for the materials, it stands here what a piece costs.</p>
    <button type="button" @click=${()=>Gl()}>To the prices paid</button>`;function Gl(t,e="lane-studio"){lt("set-up studio"),t&&de("studio",t),vo("set-up"),requestAnimationFrame(()=>G(I(e)))}function Sv(){let{quote:t,complaint:e,is_old:n}=hr();return r`${t?r`${Av(t)} ${Nf(t)}`:u}
    <div class="row">${Mv(e)}</div>
    ${Fv()?u:Ev(e)} ${e?Dv(e):u}
    ${t?Bv(t,n):e?u:r`<p class="hint" role="status">Asking what it costs ...</p>`}`}function Av({numbers:t}){let e=[...new Set(t.flatMap(o=>o.dangers))];if(!e.length)return u;let n=o=>t.filter(i=>i.dangers.includes(o)).map(i=>i.sell);return r`<div class="dangers">
    ${e.map(o=>r`<p class="danger"><strong>${Ce}</strong> ${n(o).join(", ")} to sell: ${o}</p>`)}
  </div>`}var Pv=["sell","margin","markup","price"],Yl=(t,e)=>t?.file===""&&t.field===e?K(t):void 0;function Dv(t){return Pv.some(e=>Yl(t,e))?u:r`<p class="alarm" role="status">${Fi(t.field)}${K(t)}</p>
    ${t.is_fault?r`<button type="button" @click=${Kl}>Ask again</button>`:t.field.startsWith("/")?r`<button type="button" @click=${Bl}>Go to the field</button>`:u}
    ${Ll(t)}`}function Uf({id:t,label:e,unit:n,value:o,hint:i,complaint:s,take:a,left:d}){return r`<div class="field ${s?"wants":""}">
    <label for=${t} data-said=${n??u}>${e}</label>
    <input
      id=${t}
      .value=${j(o)}
      @input=${c=>a(c.target.value)}
      @blur=${()=>d?.()}
      autocomplete="off"
      spellcheck="false"
      aria-invalid=${s?"true":"false"}
      aria-describedby=${s||i?`${t}-said`:u}
    />
    ${Pt(t,s,i)}
  </div>`}function Mv(t){let{numbers:e}=l.quote_wish;return Uf({id:"quote-numbers",label:"Numbers of pieces",value:e??String(l.plan?.pieces.sell??""),hint:"One, or several to compare: 12, 24, 48",complaint:Yl(t,"sell"),take:n=>Ko({numbers:n}),left:()=>{e!==void 0&&!e.trim()&&Ko({numbers:void 0})}})}var Ov=()=>gt()?Gl("money asking",`${X("studio","/asking")}-name`):Gl(),Fv=()=>Object.keys(g("studio","/asking")??{}).length>0,Cv=[["margin","By a margin"],["markup","By a markup"],["price","A price as set"]],Lv={margin:{label:"Margin, of the price",unit:"%"},markup:{label:"Markup, on the cost",unit:"%"},price:{label:"Price of a piece",unit:""}};function Ev(t){let{by:e,figure:n}=l.quote_wish,{label:o,unit:i}=Lv[e??"price"],s=a=>i&&tn(a)?`${a.trim()} ${i}`:a;return r`${rt("A price, for this moment",e,Cv,a=>{Ko({by:a,figure:""}),G(I("quote-figure"))})}
    ${e?r`<div class="row">
            ${Uf({id:"quote-figure",label:o,unit:i||l.quoted?.quote?.currency,value:i?n.replace(/ %$/,""):n,complaint:Yl(t,e),take:a=>Ko({figure:s(a)})})}
          </div>`:u}
    <p class="hint">Your ways of selling can be kept in My studio: then each price stands here.</p>
    <button type="button" @click=${Ov}>Keep my ways of selling</button>`}function Bv(t,e){let n=[...new Set(t.numbers.flatMap(o=>o.unpriced))];return r`${n.length?r`<p class="alarm">
          <strong>Unpriced</strong>, and so no price to ask: ${n.join(", ")}. The cost leaves it out.
        </p>`:u}
  ${Wf(t,e)} ${Wv(t,e)}`}function Wv({numbers:t,steps:e,gaps:n,currency:o},i){let s=a=>a===null?"":`, ${a} ${o} more`;return r`<div class="worth-making ${i?"old":""}">
    <h3>How many is it worth making?</h3>
    <ul class="limits">
      ${t.flatMap(({around:a})=>a.map(({text:d})=>r`<li><b>${d}</b></li>`))}
      ${n.map(({from:a,to:d,why:c})=>r`<li><b>${a===d?a:`${a} to ${d}`} cannot be made: ${c}.</b></li>`)}
    </ul>
    ${e.length?r`<details>
            <summary>Where the run begins to cost more</summary>
            <ul class="limits">
              ${e.map(a=>r`<li><b>${a.sell}: ${a.begins}${s(a.more)}</b></li>`)}
            </ul>
          </details>`:u}
  </div>`}function Jf(t){if(!Fp(t))return u;let{whole:e}=t,{batches:n}=e.pieces,o=xt(e)?`${ct(n,"batch","batches")} together`:"all whippings together";return r`<section class="needs" aria-labelledby="needs-title">
    <h2 id="needs-title" tabindex="-1">To have ready for the whole run <small>${o}</small></h2>
    <p class="aside">To buy and to set out by, not to weigh by: each batch is weighed by itself.</p>
    <div class="jugs">
      ${zf(t,"pour","The base, whole run")}
      ${e.pipe?zf(t,"pipe","The topping, whole run"):u} ${Iv(t)}
    </div>
  </section>`}function zf(t,e,n){let{whole:o}=t,i=e==="pour"?o.pour:o.pipe,s=[...Up(i),...Ls(i)];return r`<div class="jug">
    <h3>${n} <small>${i.formula}</small></h3>
    ${s.map(({one:a,i:d})=>$r(`${e}.ingredients.${d}.g`,a.name,Dn(l.units,a)))}
    ${$r(`${e}.make_g`,e==="pour"?"Base in all":"Topping in all",C(l.units,i.make_g))}
  </div>`}var $r=(t,e,n)=>A({key:`needs.${t}`,label:e,shown:n,of:t});function Iv(t){let{whole:e}=t,n=(e.pour.layers??[]).flatMap((s,a)=>s.colours.map((d,c)=>({layer:s,one:d,i:a,j:c}))),o=e.dust??[];if(!n.length&&!o.length)return u;let i=s=>st(l.units,Tt(s,""));return r`<div class="jug">
    <h3>Colours and dust, whole run</h3>
    ${n.map(({layer:s,one:a,i:d,j:c})=>$r(`pour.layers.${d}.colours.${c}.g`,`${a.name}, for ${s.name}`,Dn(l.units,a)))}
    ${o.map((s,a)=>$r(`dust.${a}.g`,s.name,i(s)))}
  </div>`}function Vf(t){let{cost:e,fresh_g:n,cured_g:o,label_g:i,lightest:s,size:a}=t.piece,d=s?"A bar on average, ":"",c=p=>d?d+p.toLowerCase():p;return r`<section class="piece" aria-labelledby="piece-title">
      <h2 id="piece-title">The piece</h2>
      ${A({key:"piece.fresh",label:c("Fresh"),shown:C(l.units,n),of:"piece.fresh_g"})}
      ${o===null?u:A({key:"piece.cured",label:c("Cured"),shown:C(l.units,o),of:"piece.cured_g"})}
      ${s?A({key:"piece.lightest",label:"The lightest bar",note:s.cured_g===null?"fresh":"cured",shown:C(l.units,s.cured_g??s.fresh_g),of:s.cured_g===null?"piece.fresh_g":"piece.cured_g"}):u}
      ${i===null?u:A({key:"piece.label",label:"Net weight for the label",shown:C(l.units,i,0),of:"piece.label_g"})}
      ${a?A({key:"piece.size",label:"Size for its box, w \xD7 d \xD7 h",shown:[`${[a.width_mm,a.depth_mm,a.height_mm].map(p=>T(p,0)).join(" \xD7 ")} mm`,""],of:"piece.size"}):u}
      ${e&&e.amount!==null?r`${A({key:"piece.cost",label:"Material cost of one piece",shown:[`${e.amount} ${e.currency}`,""],size:"weigh",note:`${e.total} ${e.currency} for the run`,of:"piece.cost.amount"})}
            ${e.unpriced.length?r`<p class="alarm">Unpriced, and not in this figure: ${e.unpriced.join(", ")}.</p>`:u}`:r`<p class="aside">No price of anything in it is given, so there is no cost.</p>`}
      ${Zl(t)}
    </section>
    ${qf()} ${Jf(ao(t))}`}function Zl(t){let e=t.label;if(!e)return u;let n=(e.allergens??[]).filter(i=>i.named).map(i=>i.name),o=(i,s)=>s?r`<h3>${i}</h3>
          <p>${s}</p>`:u;return r`<details>
    <summary>Label draft, ${e.market}</summary>
    ${o("Net quantity",e.net_quantity?`${e.net_quantity.statement}: ${e.net_quantity.because}.`:"")}
    ${o("Ingredients, as saponified",e.as_saponified?.text)}
    ${o("Ingredients, as charged",e.as_charged?.text)} ${o("Allergens to name",n.join(", "))}
    <ul class="limits">
      ${(e.remarks??[]).map(i=>r`<li>${i.text}</li>`)}
    </ul>
  </details>`}var[Qf,tu]=[440,270],[Li,Xl,br,Ao]=[64,Qf-10,10,tu-52],Hv=6,jv=8;function Kf(t){let e=t/Hv,n=10**Math.floor(Math.log10(e)),o=[1,2,5,10].map(i=>i*n).find(i=>i>=e);return Array.from({length:Math.floor(t/o+1e-9)+1},(i,s)=>s*o)}var Po=t=>T(t,1);function Gf(t,e){let n=t.at(-1)?.depth_mm??1,o=t.at(-1)?.volume_ml??1,i=d=>Po(Li+(Xl-Li)*d/n),s=d=>Po(Ao-(Ao-br)*d/o),a=t.map(({depth_mm:d,volume_ml:c})=>`L${i(d)} ${s(c)}`).join("");return r`<svg
      class="level-curve"
      viewBox="0 0 ${Qf} ${tu}"
      role="img"
      aria-label="Level curve: volume by depth, with the pour line at ${e} millimetres"
    >
      ${Kf(n).map(d=>F`<path class="grid" d="M${i(d)} ${br}V${Ao}" />
            <text x=${i(d)} y=${Ao+20} text-anchor="middle">${Po(d)}</text>`)}
      ${Kf(o).map(d=>F`<path class="grid" d="M${Li} ${s(d)}H${Xl}" />
            <text x=${Li-8} y=${s(d)} text-anchor="end" dominant-baseline="middle">${Po(d)}</text>`)}
      ${F`<text x=${(Li+Xl)/2} y=${tu-6} text-anchor="middle">depth, mm</text>
        <text transform="translate(16 ${(br+Ao)/2}) rotate(-90)" text-anchor="middle">volume, ml</text>
        <path class="curve" d="M${i(0)} ${s(0)}${a}" />
        <path class="pour-line" d="M${i(e)} ${br}V${Ao}" />`}
    </svg>
    ${Nv(t)}`}function Nv(t){let e=Math.max(1,Math.round(t.length/jv)),n=t.filter((o,i)=>(i+1)%e===0);return r`<details>
    <summary>The curve as a table</summary>
    <table class="levels">
      <caption>
        What one cavity holds to a depth
      </caption>
      <thead>
        <tr>
          <th scope="col">Depth, mm</th>
          <th scope="col">Volume, ml</th>
          <th scope="col">One millimetre more, ml</th>
        </tr>
      </thead>
      <tbody>
        ${n.map(({depth_mm:o,volume_ml:i,ml_per_mm:s})=>r`<tr>
              <th scope="row">${Po(o)}</th>
              <td>${Po(i)}</td>
              <td>${T(s,2)}</td>
            </tr>`)}
      </tbody>
    </table>
  </details>`}var wr=Math.PI/8,qv=500,eu=class extends HTMLElement{#n=[];#t=0;#e;#i=!1;#o=!1;#s="";#r=!1;#a="";#l="Drawing ...";#d=0;#m=!1;#f=new ResizeObserver(()=>this.#e?.fit());#h=new IntersectionObserver(([e])=>this.#$(e.isIntersecting),{rootMargin:"400px"});set views(e){this.#n=e,this.#g()}connectedCallback(){this.#u(),this.#h.observe(this)}disconnectedCallback(){window.clearTimeout(this.#d),this.#h.disconnect(),this.#f.disconnect(),this.#e?.end(),this.#e=void 0,this.#a="",URL.revokeObjectURL(this.#s)}#$(e){this.#m=e,e&&requestIdleCallback(()=>{this.#b()},{timeout:1500})}async#b(){if(this.#e||this.#o)return this.#g();let e=this.querySelector("canvas");if(!(!this.isConnected||!e||this.#i)){this.#i=!0;try{let{Turntable:n}=await import("./solid_view-3BHCV7RK.js");this.#e=new n(e),this.#f.observe(e)}catch{this.#o=!0}this.#i=!1,this.#u(),await this.#p()}}#g(){let e=this.#e||this.#o;!this.#m||!e||this.#c()===this.#a||(window.clearTimeout(this.#d),this.#d=window.setTimeout(()=>{this.#p()},qv))}#c(){let{of:e}=this.#n[this.#t],n=this.#o?"plan"in e?"piece":"picture":"glb",[o,i]=Object.entries(e)[0];return JSON.stringify({kind:n,[o]:this.#r&&!this.#o?{...i,"cut-open":!0}:i})}async#p(){let e=this.#c();if(e!==this.#a){try{let n=await je(JSON.parse(e));if(e!==this.#c()||!this.isConnected)return;this.#o?(URL.revokeObjectURL(this.#s),this.#s=URL.createObjectURL(n)):this.#e?.show(oo(await n.arrayBuffer())),this.#a=e,this.#l=""}catch(n){if(!(n instanceof v))throw n;this.#l=n.message}this.#u()}}#_(e){e(),this.#l="Drawing ...",this.#u(),this.#p()}#u(){let e=r`<div class="choice" role="group" aria-label="What to look at">
      ${this.#n.map((o,i)=>r`<button
            type="button"
            aria-pressed=${i===this.#t?"true":"false"}
            @click=${()=>this.#_(()=>this.#t=i)}
          >
            ${o.words}
          </button>`)}
    </div>`,n=r`<p class="aside" role="status">${this.#l}</p>`;he(r`${e} ${this.#o?this.#y():this.#w()} ${n}`,this)}#w(){let e=i=>()=>this.#e?.turn(i),n=i=>()=>this.#e?.tip(i),o=()=>this.#_(()=>this.#r=!this.#r);return r`<canvas
        role="img"
        aria-label="${this.#n[this.#t]?.words??""} as a solid; turn it with the buttons below."
      ></canvas>
      <div class="choice">
        <button type="button" @click=${e(-wr)}>Turn left</button>
        <button type="button" @click=${e(wr)}>Turn right</button>
        <button type="button" @click=${n(wr)}>From above</button>
        <button type="button" @click=${n(-wr)}>From below</button>
        <button type="button" aria-pressed=${this.#r?"true":"false"} @click=${o}>Cut open</button>
      </div>`}#y(){return r`<p class="aside">This browser shows no solids; here is the drawing.</p>
      ${this.#s?r`<img
              src=${this.#s}
              alt="${this.#n[this.#t].words}, drawn to scale with its measures"
            />`:u}`}};customElements.define("solid-panel",eu);function Yf(t){let{measured:e}=l;if(!e)return r`<p role="status">${l.measuring_failed??"Measuring the mould ..."}</p>`;let n=e.gauge.pockets[0],o=e.gauge.notes;return r`<section class="mould" aria-labelledby="mould-title">
    <h2 id="mould-title">The mould <small>${t.pour.mould}</small></h2>
    ${A({key:"mould.brimful",label:"To the brim",note:`${S(_t(l.units,n.brim_mm-n.floor_mm))} deep, ${e.gauge.pockets.length} ${e.gauge.pockets.length===1?"cavity":"cavities"}`,shown:wt(l.units,n.brimful_ml),of:"pockets.0.brimful_ml",working:e.gauge.how.find(i=>i.of==="pockets.0.brimful_ml")})}
    <div class="beside">
      <figure>
        <figcaption>Volume by depth; the dashed line is the pour line</figcaption>
        ${Gf(n.levels,t.pour.depth_mm)}
      </figure>
      <figure>
        <figcaption>3D view</figcaption>
        <solid-panel .views=${Uv(t,e.mould)}></solid-panel>
      </figure>
    </div>
    ${o.length?r`<ul class="limits">
            ${o.map(i=>r`<li>${i.text}</li>`)}
          </ul>`:u}
  </section>`}function Uv(t,e){let n={words:"The mould, filled",of:{gauge:{file:e,"below-brim":`${t.pour.below_brim_mm} mm`}}},o={words:"The whole piece",of:{plan:{file:l.run.file,run:l.run.now}}};return t.pipe||t.decorations?.length||t.pour.layers?.length?[o,n]:[n,o]}var Do=t=>y(l.printing,t);function Zf(t,e){let n=document.createElement("a");n.href=t,e(n),n.click()}async function Xf(t){if(!l.printing.is_working){Do({is_working:!0,told:"Making it ..."});try{await zv(),Do({told:await t()})}catch(e){Do({told:e instanceof Error?e.message:String(e)})}Do({is_working:!1})}}async function zv(){await Yn();let t=Fe("run");if(t)throw new Error(`${t.file} was changed outside this page: choose first which version to keep.`)}var dn=(t,e)=>()=>Xf(async()=>{let n=URL.createObjectURL(await je(e));return Zf(n,o=>o.download=t),window.setTimeout(()=>URL.revokeObjectURL(n),6e4),`${t} is in your downloads.`}),Jv=t=>()=>Xf(async()=>(Zf(await Vu(t),e=>Object.assign(e,{target:"_blank",rel:"noopener"})),"It is open in a tab of its own: print it there at 100 %, not fitted to the page.")),Vv=t=>{Do({paper:t}),localStorage.setItem("paper",t)},Kv=t=>t.batches.flatMap(e=>e.numbers.map(n=>({number:n,one:e}))).sort((e,n)=>e.number-n.number);function th(t){let{batch:e}=l.printing;return xt(t)&&e<=t.pieces.batches?e:0}function Qv(t){if(!xt(t))return u;let e=th(t),n=i=>Do({batch:Number(i.target.value)}),o=(i,s)=>r`<option value=${i} .selected=${j(i===e)}>${s}</option>`;return r`<div class="row">
    <div class="field choose">
      <label for="sheet-batch">The sheet is for</label>
      <select id="sheet-batch" @change=${n}>
        ${o(0,"the whole run")}
        ${Kv(t).map(({number:i,one:s})=>o(i,`batch ${i} of ${t.pieces.batches}: ${we(t,s)}`))}
      </select>
    </div>
  </div>`}function eh(t){let{paper:e,is_working:n,told:o}=l.printing,i=l.run.file.split("/").at(-1).replace(/(\.run)?\.json$/,""),s={file:l.run.file,run:l.run.now},a=l.measured?.mould,d={file:a,"below-brim":`${t.pour.below_brim_mm} mm`},c=th(t),p={plan:s,paper:e,...c?{batch:String(c)}:{}},m=(_,$,w="")=>r`<button type="button" class=${w} ?disabled=${n} @click=${()=>{$()}}>${_}</button>`;return r`<section class="out" aria-labelledby="out-title">
    <h2 id="out-title">Print and download</h2>
    <h3>The sheet for the bench</h3>
    ${rt("Paper",e,[["A4","A4"],["Letter","Letter"]],Vv)}
    ${Qv(t)}
    <div class="choice">
      ${m("Bench sheet, to print",Jv({kind:"sheet",...p}),"strong")}
      ${l.files?.makes_pdf?m("Bench sheet, PDF",dn(`${i}${c?` batch ${c}`:""}.pdf`,{kind:"sheet-pdf",...p})):""}
    </div>
    <h3>For the label, the wall and the printer</h3>
    <div class="choice">
      ${t.label?m("Label draft",dn(`${i} label.txt`,{kind:"label",plan:s})):""}
      ${m("Drawing of the pour, true size",dn(`${i} pour.svg`,{kind:"picture",plan:s}))}
      ${m("Drawing of the piece",dn(`${i}.svg`,{kind:"piece",plan:s}))}
      ${m("Whole piece, GLB (3D viewer)",dn(`${i}.glb`,{kind:"glb",plan:s}))}
      ${m("Whole piece, STL (3D printing)",dn(`${i}.stl`,{kind:"stl",plan:s}))}
      ${a?r`${m("Filled cavity, GLB (3D viewer)",dn(`${i} cavity.glb`,{kind:"glb",gauge:d}))}
            ${m("Cavity, STL (3D printing)",dn(`${i} cavity.stl`,{kind:"stl",gauge:{file:a}}))}`:""}
    </div>
    <p role="status">
      ${o||`The drawing has the pour line ${S(_t(l.units,t.pour.below_brim_mm))} below the brim.`}
    </p>
  </section>`}var nh=t=>eh(t);var $t={at:"/decorations"},Mo=t=>`${$t.at}/${t}`,cn=t=>D("run",`${Mo(t)}/name`).trim()||`Decoration ${t+1}`,Xt=()=>b(l.run.now,"/cut")!==void 0,yr=t=>["mould","rod","drizzle"].find(e=>g("run",`${t}/${e}`)!==void 0),Ei=t=>["per_piece","per_cast"].find(e=>g("run",`${t}/${e}`)!==void 0);var Vt="/batch",oh=t=>`${t}/moulds_owned`;function nu(){return P({name:"batches",pointers:[Vt],summary:`Batches${Gv()}`,body:()=>r` <p class="hint">What you leave blank sets no limit. Pots, bowl and moulds owned stand in your studio.</p>
        ${H("run",Vt)}
        <div class="row">${Yv()} ${Xv()}</div>
        ${k({question:"Cavities at each filling",at:Vt,asked_at:`${Vt}/fill`,chosen:g("run",`${Vt}/fill`)==="full"?"full":"needed",answers:[["needed","As many as are needed"],["full","All of them, the rest to stock"]],puts:t=>ih("fill",t==="full"?t:void 0)})}`})}function Gv(){let[t,e]=[`${Vt}/pieces`,`${Vt}/casts`].map(o=>D("run",o)),n=[t&&`at most ${t} in a batch`,e&&`at most ${e} casts in a batch`].filter(Boolean);return n.length?`: ${n.join(", ")}`:""}function ih(t,e){let n=ot("run",Vt,[t]),o=e===void 0?n:{...n,[t]:e};return Object.keys(o).length?o:void 0}function Yv(){let t=g("run",`${Vt}/casts`)!==void 0,e=(n,o)=>f({label:o,at:`${Vt}/${n}`,count:!0,optional:!0,takes_part:!0,short:!0,term:"batch"});return Xt()?g("run",`${Vt}/pieces`)!==void 0?r`${e("pieces","Most bars in a batch")}
        <button type="button" @click=${Zv}>Count loaves instead</button>`:e("casts","Most loaves in a batch"):t?e("casts","Most casts in a batch"):e("pieces","Most pieces in a batch")}function Zv(){L("run","Counted in loaves",Vt,ih("pieces",void 0))}function Xv(){let t=`${Vt}/whippings`;return!Ut()&&g("run",t)===void 0?u:f({label:"Whippings a batch",at:t,count:!0,optional:!0,takes_part:!0,short:!0,hint:"Each weighed out by itself; else one."})}var tk=500,ek=()=>b(l.run.now,"/cut")===void 0&&nk()>=tk,nk=()=>l.plan?.pour.brimful_ml??l.measured?.gauge.pockets[0]?.brimful_ml??0;function sh(t){lt("set-up cut"),L("run","Cut","/cut",{bar:ou[t],kerf:""},nt("run",`/cut/bar/${Object.keys(ou[t])[0]}`))}function ok(){L("run","Left whole","/cut",void 0,I("cut-into-bars"))}function rh(){return ek()?r`<button type="button" id="cut-into-bars" @click=${()=>sh("loaf")}>Cut it into slices</button>
    <button type="button" @click=${()=>sh("slab")}>Cut it into bars</button>`:u}var ou={loaf:{thickness:""},slab:{length:"",width:""}};function ik(){let t=g("run","/cut/bar")??{};return"thickness"in t?"loaf":"length"in t||"width"in t?"slab":void 0}var sk={loaf:[["","Along the longer side"],["x","Along x, across the drawing"],["y","Along y, away from you"],["z","Upwards: rounds off a column"]],slab:[["","Whichever gives more bars"],["x","Along x, across the drawing"],["y","Along y, away from you"]]};function ah(){let t=ik(),e=(o,i)=>f({label:o,at:`/cut/${i}`,unit:"mm",short:!0,optional:!0}),n=D("run","/cut/along");return r` ${k({question:"What is cut?",at:"/cut/bar",chosen:t,answers:[["loaf","A loaf, into slices"],["slab","A slab, into bars"]],puts:o=>ou[o]})}
    <div class="row">
      ${t==="loaf"?f({label:"Bar, thickness",at:"/cut/bar/thickness",unit:"mm",short:!0}):u}
      ${t==="slab"?["length","width"].map(o=>f({label:`Bar, ${o}`,at:`/cut/bar/${o}`,unit:"mm",short:!0})):u}
      ${f({label:"Kerf of each cut",at:"/cut/kerf",unit:"mm",short:!0,term:"kerf"})}
      ${e("Off each end","end_trim")} ${e("Off each side","side_trim")}
      ${e("Planed off the top","top_planing")}
      ${e(t==="slab"?"Planed off each side of a bar":"Planed off both faces","face_planing")}
    </div>
    <p class="hint">The kerf of a wire is 0 mm.</p>
    ${t?k({question:t==="loaf"?"Slices are cut along":"Bars lie along",at:"/cut/along",chosen:n,answers:sk[t],puts:o=>o||void 0}):u}
    <button type="button" @click=${ok}>Leave it whole</button>`}var rk={piece:{per_piece:""},surface:{on_covered_surface:"",coverage:"",share_that_sticks:""}},te={at:"/dust"},vr=t=>D("run",`/dust/${t}/name`).trim()||`Dust ${t+1}`;function lh(){lt("set-up dust"),q(te,{name:""},"Dust")}function ak(t){return g("run",`${t}/per_piece`)!==void 0?"piece":g("run",`${t}/on_covered_surface`)===void 0?void 0:"surface"}function uh(t){let e=`/dust/${t}`,n=ak(e),o=vr(t),i=s=>({...ot("run",e,["per_piece","on_covered_surface","coverage","share_that_sticks"]),...rk[s]});return r` ${f({label:"Which powder",at:`${e}/name`})}
  ${k({question:"How much of it?",at:e,chosen:n,answers:[["piece","Weighed for one piece"],["surface","By the surface it covers"]],puts:i})}
  ${n==="piece"?f({label:`${o}, for one piece`,at:`${e}/per_piece`,unit:"g",hint:"What misses it included."}):u}
  ${n==="surface"?r`<div class="row">
            ${f({label:"Powder on the covered surface",at:`${e}/on_covered_surface`,unit:"mg/cm2",short:!0})}
            ${f({label:"Share of the surface covered",at:`${e}/coverage`,unit:"%",short:!0})}
            ${f({label:"Share of the powder that sticks",at:`${e}/share_that_sticks`,unit:"%",short:!0})}
          </div>
          <p class="hint">
            The surface is all exposed surface of the piece in its mould: topping, decoration, level batter.
          </p>`:u}
  ${an("run",e,o)}`}var lk={"by number":{},on_top:{on_top:{pressed_in:""}},buried:{buried:{cover:""}}};function uk(t){return["on_top","buried"].find(e=>g("run",`${t}/${e}`)!==void 0)??"by number"}function dh(t,e){let n=uk(t),o=i=>({...ot("run",t,["on_top","buried"]),...lk[i]});return yr(t)==="drizzle"?r`<p class="aside">A drizzle lies on the surface it covers.</p>`:P({name:`${t} where`,pointers:[`${t}/on_top`,`${t}/buried`],summary:"Where it goes",body:()=>r` ${k({question:"Where does it go?",at:t,is_told_elsewhere:!0,chosen:n,answers:[["on_top","On top, pressed in"],["buried","Buried in the pour"],["by number","Not placed, only counted"]],puts:o})}
      ${n==="on_top"?dk(`${t}/on_top`):n==="buried"?pk(t,e):r`<p class="aside">It is counted and weighed; its position is not checked.</p>`}`})}function dk(t){return r`<div class="row">
      ${f({label:"Pressed into the top",at:`${t}/pressed_in`,unit:"mm"})}
      ${f({label:"Flat of the peak, across",at:`${t}/peak_flat`,unit:"mm",optional:!0})}
    </div>
    <p class="hint">
      Pressed in 0 mm, it is only set down. The flat of the peak is what it stands on, if you measured it.
    </p>
    ${ch(t,"It is turned")}`}function ch(t,e){let n=o=>f({label:`About ${o}`,at:`${t}/turn/${o}`,unit:"deg",optional:!0,short:!0});return P({name:`${t} turn`,pointers:[`${t}/turn`],summary:e,body:()=>r` <div class="row">${["x","y","z"].map(n)}</div>
        <p class="hint">Degrees about its middle, x first, from how it was cast. A rod lies along x.</p>`})}var ck=[["level","Find places: upright, at one height"],["layered","Find places: upright, in several levels"],["free","Find places: turned any way"],["said","I say where"]];function pk(t,e){let n=`${t}/buried`,o=e===x($t).findIndex(a=>a.buried!==void 0),i=g("run",`${n}/places`)!==void 0?"said":g("run",`${n}/arrange`),s=g("run",`${n}/placed`);return r`${H("run",n)}
  ${f({label:"Cover wanted all round",at:`${n}/cover`,unit:"mm",hint:"Batter between the embed and wall, floor, pour line and the next one.",term:o?"embed":void 0})}
  ${k({question:"When is it set in?",at:`${n}/placed`,chosen:s,answers:[["before the pour","Before the pour"],["pressed in after","Pressed in after"]],puts:a=>a,hint:"Pressed in, it stays where it is once the batter is at a firm trace.",term:o?"trace":void 0})}
  ${k({question:"Where in the pour?",at:t,asked_at:`${n}/arrange`,chosen:i,answers:ck,puts:a=>fk(t,a)})}
  ${i==="said"?gk(t,e):u}`}var mk=()=>r`<svg
    class="places"
    viewBox="0 0 216 84"
    role="img"
    aria-label="From above, x is counted from the middle to the right and y to the back; from the side, the height from the floor to its lowest point."
  >
    ${F`<g class="axes"><path d="M10 14H94V70H10Z M52 42H76M76 42V26M52 14V70M10 42H94" />
      <path d="M122 20L130 70H198L206 20M178 70V52" /></g>
    <circle class="shaded decorate" cx="76" cy="26" r="7" /><circle class="shaded decorate" cx="178" cy="45" r="7" />
    <text x="60" y="52">x</text><text x="80" y="40">y</text><text x="182" y="65">height</text>
    <text x="10" y="82">from above</text><text x="130" y="82">from the side</text>`}
  </svg>`,ph={x:"",y:"",height:""};function fk(t,e){let n=ot("run",`${t}/buried`,["arrange","places"]);if(e!=="said")return{...g("run",t),buried:{...n,arrange:e}};let o=Number(g("run",`${t}/${Ei(t)}`)),i=Array.from({length:o>=1&&o<=50?o:1},()=>ph);return{...ot("run",t,["per_piece","per_cast"]),[mh(t)]:i.length,buried:{...n,places:i}}}var mh=t=>Xt()?"per_cast":Ei(t)??"per_piece";function hk(t){let e=(n,o)=>{let i=["per_piece","per_cast"].reduce((s,a)=>M(s,`${t}/${a}`,void 0),n);return M(i,`${t}/${mh(t)}`,o)};return{at:`${t}/buried/places`,least:1,and:e}}function gk(t,e){let n=hk(t),o=x(n);return r`${mk()}
    <p class="hint">
      x: right of the middle; y: behind it; either below zero for the other side. Height: of its lowest point above the
      floor.
    </p>
    ${o.map((i,s)=>{let a=`${n.at}/${s}`,d=c=>f({label:`Place ${s+1}: ${c}`,at:`${a}/${c}`,unit:"mm",short:!0});return r`<div class="part" id=${B(n,s)} role="group" aria-label="Place ${s+1} of ${cn(e)}">
        ${H("run",a)}
        <div class="row">
          ${d("x")} ${d("y")} ${d("height")} ${z(n,s,`place ${s+1} of ${cn(e)}`)}
        </div>
        ${ch(a,`Place ${s+1} is turned`)}
      </div>`})}
    ${J(n,"Add a place",()=>q(n,ph,"Place"))}
    <p class="aside">${o.length} in each.</p>`}var fh=t=>`${t} made`;function _k(){let t=Mo(x($t).length),e=Xt()?{}:{per_piece:""};lt("set-up decorate");for(let n of[fh(t),`${t} where`])de("run",n);q($t,{name:"",material:"",...e,density:"",spares:"",melt_loss:"",left_in_jug:""},"Decoration")}function hh(){let[t,e]=[x($t).length>0,x(te).length>0];return r`${J($t,t?"Add another decoration":"Add a decoration",_k)}
  ${J(te,e?"Add another dust":"Add a dust",lh)}`}function gh(t){let e=Mo(t);return r` ${H("run",e)} ${yk(e)}
    <div class="row">
      ${$k(e)} ${f({label:"Spares",at:`${e}/spares`,unit:"%",short:!0})}
      ${f({label:"Lost in melting",at:`${e}/melt_loss`,unit:"%",short:!0})}
      ${f({label:"Left in the jug per tray fill",at:`${e}/left_in_jug`,unit:"g",short:!0})}
      ${f({label:"Density when set",at:`${e}/density`,unit:"g/ml",short:!0})}
    </div>
    ${dh(e,t)} ${an("run",e,cn(t))}`}function $k(t){let e=Ei(t),n=ft("run",`${t}/buried/places`).length;if(n&&n===g("run",`${t}/${e}`)&&!(Xt()&&e==="per_piece"))return r``;let o=e==="per_cast"?Xt()?"In each loaf":"In each cast":Xt()?"On each bar":"On each piece",i=s=>({...ot("run",t,["per_piece","per_cast"]),[s]:e?g("run",`${t}/${e}`):""});return r`${Xt()?k({question:"Counted by",at:t,is_told_elsewhere:!0,chosen:e,answers:[["per_piece","Bar"],["per_cast","Whole loaf"]],puts:i}):u}
  ${e?f({label:o,at:`${t}/${e}`,count:!0,short:!0}):u}`}var bk={mould:{mould:"",fill:{below_brim:""}},rod:{rod:{diameter:"",length:""}},drizzle:{drizzle:{area:"",thickness:""}}};function wk(t,e){let n=["mould","moulds_owned","fill","cast_as","rod","drizzle",...e==="drizzle"?["on_top","buried"]:[]];return{...ot("run",t,n),...bk[e]}}function yk(t){let e=yr(t),n=["name","material","mould","moulds_owned","fill","cast_as","rod","drizzle","time_per_tray_fill"].map(o=>`${t}/${o}`);return P({name:fh(t),pointers:n,summary:"What it is and how it is made",is_needed:!e,body:()=>r` <div class="row">
          ${f({label:"What it is called",at:`${t}/name`})}
          ${f({label:"What is melted for it",at:`${t}/material`})}
        </div>
        <p class="hint">The price goes by what is melted.</p>
        ${k({question:"How is it made?",at:t,is_told_elsewhere:!0,chosen:e,answers:[["mould","Cast in a mould"],["rod","A round rod, cut to length"],["drizzle","Drizzled over"]],puts:o=>wk(t,o)})}
        ${e?vk[e](t):u}
        ${f({label:"To fill all trays once, setting included",at:`${t}/time_per_tray_fill`,unit:"min",optional:!0})}`})}var vk={mould:kk,rod:t=>r`<div class="row">
      ${f({label:"Rod, diameter",at:`${t}/rod/diameter`,unit:"mm",short:!0})}
      ${f({label:"Rod, length",at:`${t}/rod/length`,unit:"mm",short:!0})}
    </div>`,drizzle:t=>r`<div class="row">
      ${f({label:"Area covered",at:`${t}/drizzle/area`,unit:"cm2",short:!0})}
      ${f({label:"Thickness",at:`${t}/drizzle/thickness`,unit:"mm",short:!0})}
    </div>`};function kk(t){let e=g("run",`${t}/fill/depth`)===void 0?"below_brim":"depth";return r`${_o("Cast in",`${t}/mould`,l.files?.moulds)}
  ${k({question:"Filled to a line",at:`${t}/fill`,chosen:e,answers:[["below_brim","below the brim"],["depth","above the floor"]],puts:n=>({[n]:""})})}
  ${e==="below_brim"?f({label:"Filled to, below the brim",at:`${t}/fill/below_brim`,unit:"mm",hint:"0 mm is level full."}):f({label:"Filled to, above the floor",at:`${t}/fill/depth`,unit:"mm"})}
  ${k({question:"What makes one?",at:`${t}/cast_as`,chosen:g("run",`${t}/cast_as`),answers:[["one cast","One cast"],["two halves","Two halves, joined at the flat"]],puts:n=>n})}`}function _h(){let t="/lye_pot",e=g("run",t)!==void 0;return!e&&!Ut()?u:r`<div class="labelled">
      ${Va(t,"Make one pot of lye solution for both",e,{})}${Le("lye_solution")}
    </div>
    ${le("lye_solution")}
    ${e?f({label:"The empty pot weighs",at:`${t}/pot_tare`,unit:"g",optional:!0,hint:"If you know it, you are told what the full pot is to weigh."}):u}`}function $h(t){let e={at:"/bottles"},n=x(e);return P({name:"bottles",pointers:[e.at],summary:"Bottles of fragrance to use up",is_needed:n.length>0,body:()=>r` <p class="hint">
          A whole bottle is divided so that every batter gets the same percentage, not half
          each.${t&&it(t)?` Weights are of ${it(t)}.`:""}
        </p>
        ${n.map((o,i)=>{let s=`${e.at}/${i}`,a=String(o.name)||`bottle ${i+1}`;return r`<div class="part" id=${B(e,i)} role="group" aria-label=${a}>
            <div class="part-head">
              <p class="part-title">${a}</p>
              ${z(e,i,a)}
            </div>
            ${H("run",s)}
            <div class="row">
              ${f({label:"Fragrance, as in the formulas",at:`${s}/name`})}
              ${f({label:"The bottle holds",at:`${s}/holds`,unit:"g",short:!0})}
            </div>
            ${t?xk(t,i,a):u}
          </div>`})}
        ${J(e,"Use up a bottle",()=>q(e,{name:"",holds:""},"bottle"))}`})}function xk(t,e,n){let o=t.bottles?.[e];return o?.name!==n?u:o.parts.map((i,s)=>A({key:`bottle.${e}.${s}`,label:`Into the ${i.part.toLowerCase()}`,note:`${T(i.percent_of_batter,2)} % of the batter`,shown:st(l.units,Tt(i,"")),size:"weigh",of:`${t.place}.bottles.${e}.parts.${s}.g`}))}var Bi="/label",su=()=>g("run",Bi)!==void 0;function bh(){let e=g("studio",Oo.studio)!==void 0?{weight_spread:""}:{market:""};lt("set-up label"),L("run","Label added",Bi,e,I("lane-label"))}function wh(){return r`${H("run",Bi)} ${Tk()}
    <button type="button" @click=${()=>L("run","Label removed",Bi,void 0)}>Remove the label</button>`}var Oo={run:"/label/market",studio:"/label/market"};function ru(){let{of:t,at:e}=yi(Oo);return r`${k({of:t,question:"Where it is sold",at:t==="run"?Bi:e,asked_at:e,chosen:g(t,e)||void 0,answers:[["EU","In the EU"],["US","In the US"]],puts:n=>t==="run"?Rk(n):n})}
  ${$o("Where it is sold",[Oo])}`}function Tk(){let t=g("run","/label/weighed_pieces")===void 0?"said":"weighed";return r`${ru()}
  ${k({question:"How much pieces differ",at:"/label",is_told_elsewhere:!0,chosen:t,answers:[["weighed","I have weighed finished pieces"],["said","I say how much they differ"]],puts:Sk})}
  ${t==="weighed"?Ak():r`<div class="row">
          ${f({label:"Heavier or lighter by",at:"/label/weight_spread",optional:!0,short:!0,hint:"Such as 2 g or 3 %."})}
          ${f({label:"Pour line higher or lower by",at:"/label/pour_line_off_by",unit:"mm",optional:!0,short:!0})}
        </div>`}
  ${f({label:"Your labels already say",at:"/label/printed_weight",unit:"g",optional:!0,hint:"It is checked against your pieces."})}
  ${Te(Oo)==="EU"||g("run",iu)!==void 0?Va(iu,"With the e mark",g("run",iu)===!0,!0):u}`}var iu="/label/e_mark";function Rk(t){return{...ot("run","/label",t==="EU"?[]:["e_mark"]),market:t}}function Sk(t){let e=ot("run","/label",["weighed_pieces","weight_spread","pour_line_off_by"]);return t==="weighed"?{...e,weighed_pieces:["","",""]}:e}function Ak(){let t={at:"/label/weighed_pieces",least:3};return r`<div class="trials">
      ${x(t).map((e,n)=>r`<div class="row" id=${B(t,n)}>
            ${f({label:`Piece ${n+1}`,at:`${t.at}/${n}`,unit:"g",short:!0})}
            ${z(t,n,`piece ${n+1}`)}
          </div>`)}
    </div>
    ${J(t,"One more piece",()=>q(t,"","piece"))}`}function yh(t){let{batches:e,fillings:n,cavities:o,to_stock:i}=t.pieces,s=t.batches.map(c=>`${Wa(t)?`${c.count} of `:""}${we(t,c)}`),a=`Made in ${e} batches${Wa(t)?": ":" of "}${fi(s)}; ${Ms(n,o)}.`,d=t.batch_limits.filter(c=>c.sets);return r`<div class="batches-told of-plan">
    ${xt(t)?r`<p><b>${a}</b></p>`:u}
    ${i>0?r`<p>
            ${ct(i,t.cut?"bar":"piece")} beyond those to sell ${i===1?"goes":"go"} to
            stock.
          </p>`:u}
    ${d.length?r`<p><span class="called">What sets a batch:</span> ${d.map(c=>c.text).join(" ")}</p>`:u}
    ${t.around.length?r`<p><span class="called">One fewer, one more:</span> ${t.around.map(c=>c.text).join(" ")}</p>`:u}
  </div>`}var vh=t=>t.map(e=>`M${e.map(([n,o])=>`${n.toFixed(2)} ${(-o).toFixed(2)}`).join("L")}Z`).join("");function kh(t,e){let n=e.brim-e.floor,o=t.pour.poured_to_mm??t.pour.depth_mm,i=t.decorations?.find(c=>!c.buried&&c.cavity_fills>0),s=i?Sh(i):0,a=i?i.on_top?.stands_proud_mm??1.9*s:0,d=t.pipe?Pk(t,e,n,a):0;return{brim:n,line:o,topping:d,ball:s,proud:a,top:Math.max(n,(t.pipe?n:o)+d+a)}}function Pk(t,e,n,o){let i=lo(b(l.run.now,"/pipe/envelope/height"));if(i!==void 0)return i;let s=(t.piece.size?.height_mm??0)-n-o;if(s>1)return s;let[a,d]=Ta(e,e.brim-.01),c=Math.PI/4*(d-a)**2;return 1500*t.pipe.visible_each_ml/c}function au(t,e){let[n,o]=Ta(t,t.brim-.01),i=(n+o)/2,s=3,a=m=>(o-n)/2*Math.sqrt(1-(m/(s+.3))**2),d=m=>-(e.brim+e.topping*m/s),c=(m,_,$)=>{let w=i+$*(Math.max(a(m),a(_))+(o-n)*.035);return`C${w} ${d(m)} ${w} ${d(_)} ${i+$*a(_)*(_?.94:1)} ${d(_)}`},p=`M${n} ${d(0)}`;for(let m=0;m<s;++m)p+=c(m,m+1,-1);p+=`L${i+a(s)*.94} ${d(s)}`;for(let m=s;m>0;--m)p+=c(m,m-1,1);return`${p}Z`}var Wi=(t,e)=>t===e?`shaded ${e}`:"plain";function pn(t,e,n=u){return r`${xh(t,e,n)}
  ${t==="decorate"&&lu(e)?r`<p class="hint">${lu(e)}</p>`:u}`}var mn=(t,e)=>r`<div class="small-view">${xh(t,e,u)}</div>`;function xh(t,e,n){let o=l.measured?.outline;if(!o)return r`<p class="drawing hint">${l.measuring_failed??"Reading the mould ..."}</p>`;let i=kh(e,o),s=o.right-o.left,a=Math.max(6,s*.1),d={x:o.left-a,y:-i.top-a,w:s+2*a,h:i.top+2*a};return r`<div class="drawing">
    <svg viewBox="${d.x} ${d.y} ${d.w} ${d.h}" role="img" aria-label=${Ik(t,e)}>
      ${Dk(t)} ${Mk(t,e,o,i)} ${Fk(t,e,o,i)} ${Ck()}
      ${Lk(t,e,o,i)} ${Wk(t,e,o,i)}
      ${F`<line class="pour-line" x1=${d.x+1} x2=${d.x+d.w-1} y1=${-i.line} y2=${-i.line} />
        <line class="brim" x1=${d.x+1} x2=${o.left-1} y1=${-i.brim} y2=${-i.brim} />
        <line class="brim" x1=${o.right+1} x2=${d.x+d.w-1} y1=${-i.brim} y2=${-i.brim} />`}
    </svg>
    ${n}
  </div>`}function Th(t,e){let n=l.measured.outline,o=kh(t,n),i=n.right-n.left,s=Math.max(6,i*.1),a=o.top+2*s;return{share:(o.top+s-e)/a,per_mm:1/a,w:i+2*s,h:a}}function Dk(t){return F`<defs>
    <pattern id="hatch-${t}" width="2.4" height="2.4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="2.4" /></pattern>
    <pattern id="dots-${t}" width="2" height="2" patternUnits="userSpaceOnUse"><circle class="dot" cx="1" cy="1" r="0.35" /></pattern>
    <clipPath id="cavity-${t}"><path clip-rule="evenodd" d=${vh(Rh())} /></clipPath>
  </defs>`}function Rh(){let t=l.measured.outline;return t.loops.map(e=>e.map(([n,o])=>[n,o-t.floor]))}function Mk(t,e,n,o){let i=t==="cut"?"pour":t,s=e.pour.layers??[],a=(s.length?s.map(d=>Ok(d,n)):[[o.line,o.line]]).map(([d,c])=>`M${n.left} 0V${-d}L${n.right} ${-c}V0Z`);return F`<g clip-path="url(#cavity-${t})">${a.map((d,c)=>F`<path class="whole" d=${d} /><path class="${Wi(i,"pour")} band${c%3}" d=${d} />${i==="pour"&&c%2===0?F`<path fill="url(#hatch-${t})" d=${d} />`:u}`).reverse()}</g>`}function Ok(t,e){let{surface:n,to_mm:o}=t;if(!n)return[o,o];let i=s=>n.over_origin_mm+n.rise_x*s+n.rise_y*e.cut_y;return[i(e.left),i(e.right)]}function Fk(t,e,n,o){if(!e.pipe||o.line>=o.brim)return u;let i=Math.min(1,(parseFloat(String(b(l.run.now,"/pipe/fills_headspace")).replace(",","."))||0)/100),s=(n.right-n.left)*i,a=(n.left+n.right)/2;return F`<g clip-path="url(#cavity-${t})"><rect class=${Wi(t,"pipe")} x=${a-s/2} width=${s}
    y=${-o.brim} height=${o.brim-o.line} /></g>`}function Ck(){return F`<path class="wall" fill-rule="evenodd" d=${vh(Rh())} />`}function Lk(t,e,n,o){let i=(n.left+n.right)/2,s=e.pipe?o.brim:o.line,a=e.decorations?.flatMap((d,c)=>(d.buried?.embeds??[]).map(p=>({embed:p,one:d,i:c})))??[];return F`
    ${e.pipe?F`<path class=${Wi(t,"pipe")} d=${au(n,o)} />${t==="pipe"?F`<path fill="url(#dots-pipe)" d=${au(n,o)} />`:u}`:u}
    ${t==="dust"?Ek(e,n,o):u}
    ${o.ball?F`<circle class=${Wi(t,"decorate")} cx=${i} cy=${-(s+o.topping+o.proud-o.ball)} r=${o.ball} />`:u}
    ${a.map(({embed:d,one:c,i:p})=>Bk(Wi(t,"decorate"),i,d,c,p))}`}function Ek(t,e,n){let o=`M${e.left} ${-n.line}H${e.right}`;return F`<path class="powder" d=${t.pipe?au(e,n):o} />`}function Bk(t,e,n,o,i){let[s,a]=[e+n.middle_mm[0],n.middle_mm[2]],d=lo(b(l.run.now,`/decorations/${i}/rod/diameter`)),c=lo(b(l.run.now,`/decorations/${i}/rod/length`));if(!d||!c)return F`<circle class=${t} cx=${s} cy=${-a} r=${Sh(o)} />`;let[p,m]=[n.turn[0][0],n.turn[2][0]],_=Math.min(1,Math.hypot(p,m)),$=d/2*Math.sqrt(1-_*_),w=c*_+2*$,R=-180/Math.PI*Math.atan2(m,p);return F`<rect class=${t} x=${-w/2} y=${-d/2} width=${w} height=${d} rx=${$} ry=${$?d/2:0}
    transform="translate(${s} ${-a}) rotate(${R})" />`}var Sh=t=>Math.cbrt(3e3*t.volume_each_ml/(4*Math.PI));function lu(t){let e=(t.decorations??[]).filter((n,o)=>b(l.run.now,`/decorations/${o}/rod`)===void 0&&(n.buried||n.cavity_fills>0)).map(n=>n.name);return e.length?`Drawn as a ball of its volume, whatever its shape: ${e.join(", ")}.`:""}function Wk(t,e,n,o){if(t!=="cut"||!e.cut)return u;let i=Math.max(e.cut.rows,e.cut.columns);return F`${Array.from({length:i-1},(s,a)=>{let d=n.left+(n.right-n.left)*(a+1)/i;return F`<line class="knife" x1=${d} x2=${d} y1=${-o.line} y2="0" />`})}`}function Ik(t,e){let n=S(_t(l.units,e.pour.below_brim_mm));return`The piece from the side, to scale; ${{pour:"the pour",pipe:"the topping",decorate:"the decoration",dust:"what powder may fall on",cut:"the loaf with its cuts"}[t]} is shaded. Pour line ${n} below the brim. ${lu(e)}`.trim()}var Hk=t=>`set-up ${t}`;function It({name:t,title:e,drawing:n,result:o,about:i,form:s}){let a=Hk(t),d=()=>Zt({part:e,fold:a},s);if(On())return r`${d()}`;i.some(([m,_])=>Et(m,_))&&lt(a);let c=l.open.has(a),p=ho().filter(({folds:m})=>m.includes(a)).length;return r`<section class="lane ${t} ${c?"is-open":""}" aria-labelledby="lane-${t}">
    <div class="part-line">
      ${c||!n?u:n()}
      <div class="part-told">
        <h2 id="lane-${t}" tabindex="-1">${e}</h2>
        ${o} ${p?r`<p class="lacks">${p} still needed</p>`:u}
      </div>
      <button
        type="button"
        aria-expanded=${c?"true":"false"}
        aria-label="${c?"Close":"Change"} ${e}"
        @click=${()=>Kt("open",a)}
      >
        ${c?"Close":"Change"}
      </button>
    </div>
    ${c?r`<div class="lane-body">${d()}</div>`:u}
  </section>`}var pt=t=>r`<p class="order ${l.is_old&&l.plan?"old":""}">${t}</p>`;var Ah=()=>x($t).length>0,Ph=()=>x(te).length>0;function Dh(t,e,n,o){return t?.length===e.length?t[o]:t?.find(i=>i.name===n)}function Mh(t){let e=t?x($t).flatMap((n,o)=>Ch(t,o)??[]):[];return It({name:"decorate",title:"Decorate",drawing:t&&(()=>mn("decorate",t)),result:e.length?e.map(n=>Nk(t,n)):pt(Oh($t,cn)),about:[["run",$t.at]],form:()=>r`${t?r`<div class="side">${pn("decorate",t)}</div>`:u}
        <div class="weights">${t?x($t).map((n,o)=>jk(t,o)):u}</div>
        ${Lh($t,cn,gh)}`})}var Oh=(t,e)=>`${x(t).map((n,o)=>e(o)).join(", ")}, not yet with figures.`;function jk(t,e){let n=Ch(t,e);return n?qk(t,n,e):u}function Fh(t){let e=t?.dust?.length?x(te).map((n,o)=>zk(t,o)):void 0;return It({name:"dust",title:"Dust",drawing:t&&(()=>mn("dust",t)),result:e??pt(Oh(te,vr)),about:[["run",te.at]],form:()=>r`<div class="side">${t?pn("dust",t):u}</div>
        <div class="weights">${t?x(te).map((n,o)=>Jk(t,o)):u}</div>
        ${Lh(te,vr,uh)}`})}var Ch=(t,e)=>Dh(t.decorations,x($t),D("run",`/decorations/${e}/name`),e);function Lh(t,e,n){return r`<div class="all-questions">
    ${x(t).map((o,i)=>r`<section class="questions" id=${B(t,i)} aria-labelledby="${B(t,i)}-title">
          <div class="part-head">
            <h3 id="${B(t,i)}-title">${e(i)}</h3>
            ${z(t,i,e(i))}
          </div>
          ${Zt({part:e(i)},()=>n(i))}
        </section>`)}
  </div>`}function Nk(t,e){let n=e.tray_fills>0?`, in ${e.tray_fills} tray ${e.tray_fills===1?"fill":"fills"}`:"",o=S(st(l.units,Tt(e,"make_")));return pt(r`Cast <b>${e.casts}</b> of ${e.name} ahead${n}, from <b>${o}</b> of
      ${e.material}${xt(t.whole)?", for the whole run":""}.`)}function qk(t,e,n){return r`<h3>${e.name} ${xt(t.whole)?r`<small>for the whole run</small>`:u}</h3>
    ${A({key:`set-up.decorations.${n}.make`,label:`Melt of ${e.material}`,shown:st(l.units,Tt(e,"make_")),of:`decorations.${n}.make_g`})}
    ${A({key:`decorations.${n}.each`,label:"Each weighs",note:`${T(e.volume_each_ml,2)} ml`,shown:C(l.units,e.mass_each_g,2),of:`decorations.${n}.mass_each_g`})}
    ${e.casting_s?r`<p>${en(e.casting_s)} of casting.</p>`:u} ${Uk(e,n)}`}function Uk(t,e){let{on_top:n,buried:o}=t;if(!n&&!o)return u;let i=a=>a===null?"not known":S(_t(l.units,a)),s=a=>{let d=(o?.embeds??[]).map(a).filter(c=>c!==null);return d.length?S(_t(l.units,Math.min(...d))):"nothing near"};return r`<h4>Fit of ${t.name}</h4>
    <dl class="facts">
      ${n?r`<div>
                <dt>Contact circle</dt>
                <dd>${i(n.contact_mm)}</dd>
              </div>
              <div>
                <dt>Flat of the peak</dt>
                <dd>${i(n.peak_flat_mm)}</dd>
              </div>
              <div>
                <dt>Sticks out by</dt>
                <dd>${i(n.stands_proud_mm)}</dd>
              </div>`:u}
      ${o?r`<div>
                <dt>In each</dt>
                <dd>${o.embeds.length}</dd>
              </div>
              <div>
                <dt>Least cover to the floor</dt>
                <dd>${s(a=>a.floor_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the wall</dt>
                <dd>${s(a=>a.wall_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the pour line</dt>
                <dd>${s(a=>a.pour_line_cover_mm)}</dd>
              </div>
              <div>
                <dt>to the next one</dt>
                <dd>${s(a=>a.apart_mm)}</dd>
              </div>
              <div>
                <dt>Batter pushed aside</dt>
                <dd>${T(o.displaced_ml,1)} ml</dd>
              </div>`:u}
    </dl>
    ${Cn(`decorations.${e}.fit`,"How the fit is measured",`decorations.${e}.${n?"on_top":"buried"}`)}`}function zk(t,e){let n=Eh(t,e);if(!n)return u;let o=it(t);return pt(r`<b>${S(st(l.units,Tt(n,"")))}</b> of ${n.name}${o?` for ${o}`:""}.`)}var Eh=(t,e)=>Dh(t.dust,x(te),D("run",`/dust/${e}/name`),e);function Jk(t,e){let n=Eh(t,e);if(!n)return u;let o=g("run",`/dust/${e}/per_piece`)!==void 0,i=n.exposed_cm2===0&&!o,s=A({key:`set-up.dust.${e}`,label:n.name,note:it(t),shown:st(l.units,Tt(n,"")),of:`${t.place}.dust.${e}.g`});return r`${s}${i?r`<p class="alarm">
          No topping or decoration is exposed, so the amount is zero: give the weight for one piece instead.
        </p>`:u}`}function Bh(t){let e=t?.cut;return It({name:"cut",title:"Cut",drawing:t&&(()=>mn("cut",t)),result:e?Vk(t,e):pt("Cut into bars, not yet with figures."),about:[["run","/cut"]],form:()=>r`${e?Kk(t,e):u}
        <div class="all-questions">${ah()}</div>`})}var Vk=(t,e)=>pt(r`Cut <b>${e.bars_each} bars</b> from each, ${e.columns} by ${e.rows}; a bar is
      ${S(C(l.units,t.piece.fresh_g))} on average, fresh.`);function Kk(t,e){return r`<div class="side">${pn("cut",t)}</div>
    <div class="weights">
      ${A({key:"cut.bar",label:"A bar on average, fresh",note:Qk(e),shown:C(l.units,t.piece.fresh_g),of:"cut.bars_each"})}
      ${A({key:"cut.offcuts",label:"Offcuts",shown:C(l.units,e.offcuts_g),of:"cut.offcuts_g"})}
      ${Gk(e)}
    </div>`}function Qk(t){let e=t.bars.map(i=>i.fresh_g),n=Math.floor(Math.min(...e)*10)/10,o=Math.ceil(Math.max(...e)*10)/10;return`${T(n,1)} to ${T(o,1)} g`}function Gk(t){return t.one_more?.length?r`<ul class="limits">
    ${t.one_more.map(e=>r`<li>Cut to ${e.size_text} along ${e.direction}: ${e.bars} bars from each.</li>`)}
  </ul>`:u}function Wh(t){return It({name:"label",title:"Label",drawing:Zk,result:pt(Yk(t)),about:[["run","/label"]],form:()=>r`<div class="more">${wh()} ${t?Zl(t):u}</div>`})}function Yk(t){let e=t?.piece.label_g;return!t?.label||e===null||e===void 0?"A draft of the label, not yet with figures.":r`Net weight for the label <b>${S(C(l.units,e,0))}</b>, sold in the ${t.label.market}.`}var Zk=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${F`<path class="plain" d="M8 12H40L54 26L40 40H8Z" /><path class="wall" d="M8 12H40L54 26L40 40H8ZM16 21H36M16 27H32M16 33H36" />`}
    </svg>
  </div>`;var hn="/pour/layers",fn={at:hn,in_order:!0},uu=[["parts","Parts"],["depth","Thickness"],["mass","Weight in one"]],xr=()=>x(fn);function Xk(){let t=e=>xr().some(n=>e in n);return uu.map(([e])=>e).find(t)??(t("rest")?"depth":"parts")}function Hh(t){let e=xr(),n=Xk();return e.length?r`<h3>
      Layers, lowest first ${t&&it(t)?r`<small>${it(t)}</small>`:u}
    </h3>
    ${k({question:"All of them by",at:hn,is_told_elsewhere:!0,chosen:n,answers:uu,puts:o=>ex(o,t)})}
    <div class="items">${e.map((o,i)=>nx(o,i,n,t))}</div>
    ${J(fn,"One more layer on top",()=>q(fn,{name:tx(e),[n]:""},"layer"))}`:r`<p class="choice">
      ${J(fn,"Pour it in layers",()=>q(fn,{name:"Layer 1",parts:1},"layer"))}
    </p>`}function tx(t){for(let e=t.length+1;;++e)if(!t.some(n=>n.name===`Layer ${e}`))return`Layer ${e}`}function jh(t,e,n){let o=t?.pour.layers?.[n];return o?.name===e.name?o:void 0}function ex(t,e){let n=xr(),o=l.is_old?void 0:e,i=(s,a)=>{let d=jh(o,s,a);return t==="parts"||!d||t==="depth"&&"tilted"in s?"":t==="depth"?`${T(d.to_mm-d.from_mm,3)} mm`:`${T(d.mass_each_g,3)} g`};return n.map((s,a)=>{let d=kr(a),c=t!=="parts"&&n.length>1&&a===n.length-1;return{...d,...c?{rest:!0}:{[t]:i(s,a)}}})}var kr=t=>ot("run",`${hn}/${t}`,[...uu.map(([e])=>e),"rest"]);function nx(t,e,n,o){let i=`${hn}/${e}`,s=String(t.name)||`Layer ${e+1}`,a=jh(o,t,e);return r`<div class="part" id=${B(fn,e)} role="group" aria-label="Layer ${s}">
    ${a&&o?ox(o,a,e):r`<p class="part-title">${s}</p>`} ${H("run",i)}
    ${sx(t,e,n,s)}
    ${o&&a?a.colours.map((d,c)=>ix(o,d,e,c)):u}
    ${P({name:i,pointers:["name","colours","tilted"].map(d=>`${i}/${d}`),summary:"Name, colours, tilt",body:()=>r` ${f({label:"Name of the layer",at:`${i}/name`})} ${ux(i,s)} ${dx(i,e)}
        ${z(fn,e,s)}`})}
  </div>`}function ox(t,e,n){return A({key:`pour.layer.${n}`,label:e.name,note:`${qa(_t(l.units,e.to_mm-e.from_mm))} thick, ${qa(C(l.units,e.mass_each_g))} each`,shown:e.g_text===void 0?C(l.units,e.g):st(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.g`})}function ix(t,e,n,o){return A({key:`pour.layer.${n}.${o}`,label:e.name,note:e.teaspoons?`about ${T(e.teaspoons,1)} tsp`:"",shown:Dn(l.units,e),size:"weigh",of:`${t.place}.pour.layers.${n}.colours.${o}.g`})}function sx(t,e,n,o){if(n==="parts")return rx(t,e,o);let i="rest"in t;return r`${i?u:f({label:`${o}, ${n}`,at:`${hn}/${e}/${n}`,unit:n==="depth"?"mm":"g"})}
    <button
      type="button"
      aria-pressed=${i?"true":"false"}
      aria-label="${o} takes the rest"
      @click=${()=>i?lx(e,n):ax(e,n)}
    >
      Takes the rest
    </button>`}function rx(t,e,n){let o=`${hn}/${e}/parts`,i=s=>()=>{h({typed:void 0}),N("run",o,Math.max(1,(Number(t.parts)||0)+s))};return r`<div class="stepper parts-of">
    <button type="button" @click=${i(-1)} aria-label="One part less of ${n}">−</button>
    ${f({label:"Parts",at:o,number:!0})}
    <button type="button" @click=${i(1)} aria-label="One part more of ${n}">+</button>
  </div>`}function ax(t,e){let n=xr().map((o,i)=>i===t?{...kr(i),rest:!0}:o.rest?{...kr(i),[e]:""}:o);L("run","takes the rest",hn,n)}function lx(t,e){let n=`${hn}/${t}`;L("run","amount of the layer",n,{...kr(t),[e]:""},nt("run",`${n}/${e}`))}function ux(t,e){let n={at:`${t}/colours`,in_order:!0};return r`${x(n).map((o,i)=>{let s=`${n.at}/${i}`,a=String(o.name)||`colour ${i+1}`;return r`<div class="part" id=${B(n,i)} role="group" aria-label="${a} in ${e}">
      <div class="part-head">
        <p class="part-title">Colour: ${a}</p>
        ${z(n,i,a)}
      </div>
      ${H("run",s)}
      <div class="row">
        ${f({label:"Colour",at:`${s}/name`})}
        ${f({label:"Rate",at:`${s}/rate`,hint:"Such as 4 g/kg of batter, 1 tsp/lb of fats."})}
        ${f({label:"Bulk density (for spoons)",at:`${s}/bulk_density`,unit:"g/ml",optional:!0,short:!0,hint:"A level cup weighed, by the cup's volume."})}
      </div>
      ${an("run",s,a)}
    </div>`})}
  ${J(n,"Add a colour",()=>q(n,{name:"",rate:""},"colour"))}`}var Ih=[["+x","+x, right in the drawing"],["-x","\u2212x, left in the drawing"],["+y","+y, back"],["-y","\u2212y, front"]];function dx(t,e){let n=`${t}/tilted`,o=g("run",`${n}/low_side`);return e===x(fn).length-1&&g("run",n)===void 0?r`<p class="hint">The last layer is poured level.</p>`:ue({at:n,name:"the tilt",title:"The mould is tilted",add:"Tilt the mould for this layer",blank:{angle:"",low_side:""},body:()=>r`${f({label:"Tilt",at:`${n}/angle`,unit:"\xB0",short:!0})}
        ${k({question:"Low side",at:`${n}/low_side`,is_told_elsewhere:!0,chosen:o||void 0,answers:Ih,puts:s=>s})}
        ${P({name:`${n} direction`,pointers:[],summary:"Another direction",is_needed:o!==""&&!Ih.some(([s])=>s===o),body:()=>f({label:"Direction of the low side",at:`${n}/low_side`,unit:"\xB0",short:!0,hint:"In degrees from +x towards +y, seen from above."})})}
        <p class="hint">A thickness is then how far up the low wall the layer stands.</p>`})}var pe=()=>b(l.run.now,"/pour/line/depth")!==void 0?"depth":"below_brim";function du(t,e){let n=t.pour.depth_mm+t.pour.below_brim_mm,o=Math.min(Math.max(0,Math.round(e*2)/2),Math.floor(n*2)/2-.5),i=pe()==="depth"?n-o:o;h({typed:void 0}),N("run",`/pour/line/${pe()}`,`${T(i,2)} mm`)}function Nh(t){let e=t.pour.depth_mm+t.pour.below_brim_mm,n=lo(b(l.run.now,`/pour/line/${pe()}`));return n===void 0?t.pour.below_brim_mm:pe()==="depth"?e-n:n}function cx(t,e){let n=t.currentTarget,o=n.parentElement.querySelector("svg").getBoundingClientRect();n.setPointerCapture(t.pointerId);let i=a=>e((a.clientY-t.clientY)/o.height),s=()=>{n.removeEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.removeEventListener(a,s)};n.addEventListener("pointermove",i);for(let a of["pointerup","pointercancel"])n.addEventListener(a,s)}function px(t){if(!l.measured)return u;let e=t.pour.depth_mm+t.pour.below_brim_mm,n=Nh(t),{share:o,h:i}=Th(t,e-n),s=c=>cx(c,p=>du(t,n+p*i)),a=c=>{let p={ArrowUp:-1,ArrowDown:1,PageUp:-5,PageDown:5}[c.key];p!==void 0&&(c.preventDefault(),du(t,n+p))},d=c=>c&&(c.style.top=`${100*o}%`);return queueMicrotask(()=>d(document.querySelector(".line-handle")??void 0)),r`<div
    class="line-handle"
    role="slider"
    tabindex="0"
    aria-label="Pour line below the brim"
    aria-valuemin="0"
    aria-valuemax=${Math.floor(e)}
    aria-valuenow=${T(n,1)}
    aria-orientation="vertical"
    aria-valuetext="${S(_t(l.units,n))} below the brim"
    @pointerdown=${s}
    @keydown=${a}
  >
    <span aria-hidden="true">↕</span>
  </div>`}function mx(t){let{pour:e}=t,n=S(_t(l.units,e.below_brim_mm)),o=e.below_brim_mm<.05?"Pour to the brim":`Pour to ${n} below the brim`,i=t.cut?"the loaf":"each",s=it(t);return pt(r`${o}, <b>${S(C(l.units,e.mass_each_g))}</b> ${i}; make
      <b>${S(C(l.units,e.make_g))}</b>${s?` for ${s}`:""}.`)}var qh=()=>pe()==="depth"?"Depth":"Below brim";function Uh(t){return It({name:"pour",title:"Pour",drawing:t&&(()=>mn("pour",t)),result:t?mx(t):pt(`${fx()}.`),about:[["run","/pour"]],form:()=>r`${t?hx(t):gx()}
        <div class="more">${Tr("pour")} ${Hh(t)} ${Gs("pour")}</div>`})}function fx(){let t=D("run",`/pour/line/${pe()}`);return t?`${t} ${pe()==="depth"?"deep":"below the brim"}`:"No pour line yet"}function hx(t){let{pour:e}=t,n=`${t.place}.pour`,o=i=>()=>du(t,Nh(t)+i);return r`<div class="side">
      ${pn("pour",t,px(t))} ${zh(t)}
      <div class="stepper">
        <button type="button" @click=${o(-1)} aria-label="Pour line 1 mm higher">1 mm higher</button>
        ${f({label:qh(),at:`/pour/line/${pe()}`,unit:"mm"})}
        <button type="button" @click=${o(1)} aria-label="Pour line 1 mm lower">1 mm lower</button>
      </div>
    </div>
    <div class="weights">
      ${A({key:"pour.each",label:"Weigh into each",shown:C(l.units,e.mass_each_g),note:`${T(e.volume_each_ml,1)} ml`,of:`${n}.mass_each_g`})}
      ${A({key:"pour.mm",label:"1 mm more or less",shown:wt(l.units,e.ml_per_mm,2),note:`${ye(e.ml_per_mm*e.density_g_per_ml,1)} g at the line`,of:`${n}.ml_per_mm`})}
      ${A({key:"set-up.pour.make",label:"Base to make",note:it(t),shown:C(l.units,e.make_g),of:`${n}.make_g`})}
      ${A({key:"pour.density",label:"Density",shown:[`${e.density_g_per_ml} g/ml`,""],of:`${n}.density_g_per_ml`})}
    </div>`}var gx=()=>r`<div class="side">
    ${zh()} ${H("run","/pour/line")}
    ${f({label:qh(),at:`/pour/line/${pe()}`,unit:"mm"})}
  </div>`,Tr=t=>r`<button type="button" @click=${()=>Gt(t)}>
    Change the formula of the ${t==="pour"?"base":"topping"}
  </button>`;function zh(t){let e=n=>{if(n===pe())return;let o=t&&!l.is_old?t.pour[n==="depth"?"depth_mm":"below_brim_mm"]:void 0;L("run","pour line","/pour/line",{[n]:o===void 0?"":`${T(o,3)} mm`})};return rt("The pour line is measured",pe(),[["below_brim","From the brim"],["depth","From the floor"]],e)}var _x=[0,50,80,100];function Jh(t){let e=t?.pipe;return It({name:"pipe",title:"Pipe",drawing:e&&(()=>mn("pipe",t)),result:e?$x(t,e):pt("A topping, not yet with figures."),about:[["run","/pipe"]],form:()=>e?bx(t,e):wx()})}function $x(t,e){let n=it(t);return pt(r`Pipe <b>${T(e.volume_each_ml,0)} ml</b> on each, ${S(C(l.units,e.mass_each_g))} at this
      whipped density; make <b>${S(C(l.units,e.make_g))}</b>${n?` for ${n}`:""}.`)}function bx(t,e){return r`<div class="side">
      ${pn("pipe",t)}
      ${A({key:"pipe.each",label:"Topping on each",shown:wt(l.units,e.volume_each_ml),note:`${T(e.in_headspace_each_ml,1)} ml of it below the brim`,of:`${t.place}.pipe.volume_each_ml`})}
      ${A({key:"set-up.pipe.make",label:"Topping to make",note:it(t),shown:C(l.units,e.make_g),of:`${t.place}.pipe.make_g`})}
      ${A({key:"pipe.density",label:"Whipped density",note:`overrun ${T(e.overrun_percent,0)} %`,shown:[`${e.density_g_per_ml} g/ml`,""],of:`${t.place}.pipe.density_g_per_ml`,term:"overrun"})}
      ${Tr("pipe")}
    </div>
    <div class="weights">${bl(e)} ${Gh()} ${yx(t)} ${Sx(t)}</div>
    <div class="more">${$l(e)} ${_l()}</div>`}var Ii=t=>t===0?"pipe":`pipe.whipping${t}`,Hi=(t,e)=>`${t.place}.pipe.whippings.${e}`;function Vh(t,e){let n=Ds(t,e);return n?r`<h4 class="whipping">${n.replace(/^./,o=>o.toUpperCase())}</h4>`:u}function wx(){return r`<div class="more">${$l()}</div>
    <div class="side">${Gh()} ${g("run","/pipe/whip_now")===void 0?u:Qh()}</div>
    <div class="weights">${bl()} ${Tr("pipe")}</div>
    <div class="more">${_l()}</div>`}var Kh=t=>it(t)?r`<small>${it(t)}</small>`:u;function yx(t){return r`<h3>Today's bowl ${Kh(t)}</h3>
    ${Qh()} ${t.whippings.map((e,n)=>vx(t,e,n))}`}function vx(t,e,n){let o=e.pieces_now,i=o==null?0:e.pieces-o,s=i>0?`Short by ${i} at this whipped density.`:`Enough for the ${e.pieces} to make.`;return r`${Vh(t,e)}
  ${o==null?u:A({key:`${Ii(n)}.now`,label:"Enough for",note:s,shown:[ct(o,"piece"),""],size:"weigh",of:`${Hi(t,n)}.pieces_now`})}
  ${xx(t,e,n)}`}function Qh(){let t=g("run","/pipe/whip/holds"),e=t===void 0?Ri():{holds:t,net:""};return ue({at:"/pipe/whip_now",name:"today's weigh-cup",title:"Today's weigh-cup",add:"Weigh a cup of today's whip",blank:e,body:kx})}function kx(){return r`<div class="row">
    ${f({label:"Weigh-cup today, net",at:"/pipe/whip_now/net",unit:"g"})} ${Si("/pipe/whip_now")}
  </div>`}function xx(t,e,n){return e.readings?.length?P({name:`${Ii(n)} readings`,pointers:[],summary:"Other readings of the weigh-cup",body:()=>Tx(t,e,n)}):u}function Tx(t,e,n){return r`<table class="readings">
      <caption>
        If the weigh-cup reads
      </caption>
      <thead>
        <tr>
          <th scope="col">net</th>
          <th scope="col">overrun</th>
          <th scope="col">pipes</th>
        </tr>
      </thead>
      <tbody>
        ${e.readings?.map(o=>r`<tr class=${o.planned?"planned":""}>
              <th scope="row">${T(o.net_g,1)} g${o.planned?" (planned)":""}</th>
              <td>${T(o.overrun_percent,0)} %</td>
              <td>${o.pieces}</td>
            </tr>`)}
      </tbody>
    </table>
    ${Cn(`${Ii(n)}.readings`,"Show the calculation",`${Hi(t,n)}.readings`)}`}function Gh(){let t="/pipe/fills_headspace",e=Number(/^\s*(\d+(?:[.,]\d+)?)\s*%/.exec(D("run",t))?.[1]?.replace(",",".")),n=Et("run",t);return r`<h3>
      <span id="recess">How much of the headspace below the brim does the topping fill?</span>
      ${Xe("headspace")}
    </h3>
    <div class="choice pictures" role="group" aria-labelledby="recess">
      ${_x.map(o=>r`<button
            type="button"
            aria-pressed=${o===e?"true":"false"}
            @click=${()=>N("run",t,`${o} %`)}
          >
            ${Rx(o)}<span
              >${{0:"Not at all, 0 %",50:"Half, 50 %",80:"Mostly, 80 %",100:"Level, 100 %"}[o]}</span
            >
          </button>`)}
    </div>
    ${f({label:"Headspace filled, as a share",at:t,unit:"%",hint:n?void 0:"Trials piped on flat paper do not include it."})}`}function Rx(t){let e=52*(t/100);return r`<svg viewBox="0 0 72 46" aria-hidden="true">
    ${F`
    <path class="plain" d="M10 26H62L57 44H15Z" /><rect class="shaded pipe" x=${36-e/2} y="18" width=${e} height="8" />
    <path class="shaded pipe" d="M12 18C6 12 14 8 20 9C20 2 30 2 36 1C42 2 52 2 52 9C58 8 66 12 60 18Z" />
    <path class="wall" d="M8 18L15 44H57L64 18" />`}
  </svg>`}function Sx(t){let e=t.whippings.map(i=>({one:i,words:Ax(i)})).filter(({words:i})=>i),n=t.whippings[0],o=n?.limits??[];return!n||!o.length&&!e.length?u:r`<h3>Limits of whisk, bowl and time ${Kh(t)}</h3>
    ${e.map(({one:i,words:s})=>r`${Vh(t,i)}
          <p>${s}.</p>`)}
    <ul class="limits">
      ${o.map(i=>r`<li class=${i.sets?"binds":""}>
            ${i.sets?r`<strong>Sets the batch: </strong>`:u}${i.text}
          </li>`)}
    </ul>
    ${Cn("pipe.limits","How the limits come about",`${Hi(t,0)}.limits`)}`}function Ax({piping_s:t,lye_spoonfuls:e}){return[t?`${en(t)} of piping`:"",e?`${e.count} spoonfuls of lye, ${en(e.altogether_s)}`:""].filter(Boolean).join("; ")}function Zh(t){return It({name:"lye",title:"Lye",drawing:Dx,result:t?Yh(t).map(Px):pt("Not yet with figures."),about:[["run","/lye_pot"],["run","/bottles"]],form:()=>r`${t?r`<div class="more jugs">${Yh(t).map(Mx)} ${Fx(t)}</div>`:u}
        <div class="more">${_h()} ${$h(t)}</div>`})}function Yh(t){let{pieces:e}=t.batch,n={slot:"pour",title:t.pipe?"Lye for the base":"Lye",batter:t.pour,place:`${t.place}.pour`,pieces:e,key:"pour"},o=t.whippings.map((i,s)=>{let a=Ds(t,i);return{slot:"pipe",title:`Lye for the topping${a&&`, ${a}`}`,batter:i,place:Hi(t,s),pieces:e,key:Ii(s)}});return[n,...o]}function Px({title:t,batter:e,slot:n,pieces:o}){let i=Ze(n,o).length?" \u26A0":"";return pt(r`${t}: ${T(e.lye_strength_percent,1)} % strong; superfat as weighed
      <b>${Yt(e.superfat_percent.effective)}${i}</b>.`)}var Dx=()=>r`<div class="small-view">
    <svg class="jug-sign" viewBox="0 0 60 50" aria-hidden="true">
      ${F`<path class="plain" d="M15 22L19 44H41L45 22Z" /><path class="wall" d="M10 6L19 44H41L49 6M10 6H7M46 14C58 14 56 32 43 34" />`}
    </svg>
  </div>`;function Mx({slot:t,title:e,batter:n,place:o,pieces:i,key:s}){let{effective:a}=n.superfat_percent,d=Ze(t,i).length>0,c=`danger-set-up-${s.replaceAll(".","-")}`,p=s===t;return r`<div class="jug">
    <h3>${e} <small>${n.formula}</small></h3>
    ${A({key:`set-up.${s}.strength`,label:"Lye strength",note:`water ${T(n.water_to_pure_alkali,2)} : 1 to alkali; water ${T(n.water_percent_of_fats,1)} % of the fats`,shown:[`${T(n.lye_strength_percent,1)} %`,""],of:`${o}.lye_strength_percent`})}
    ${A({key:`set-up.${s}.superfat`,label:"Superfat as weighed",shown:[`${Yt(a)}${d?" \u26A0":""}`,""],of:`${o}.superfat_percent.effective`,term:s==="pour"?"superfat_as_weighed":void 0})}
    ${mi(t,c,i)} ${Xh(n.superfat_percent)} ${Ox(n,o,s)}
    ${!p||g(t,"/superfat")===void 0?u:f({label:"Planned superfat",of:t,at:"/superfat",unit:"%",described_by:d?c:void 0,hint:l.formulas[t]?.shipped?"Typing here makes a copy of the formula beside your run.":void 0})}
  </div>`}function Xh(t){let{low:e,high:n,likely_low:o,likely_high:i,uncertainties:s}=t,a=`It lies between ${Yt(e)} and ${Yt(n)}, as lots, purity and scales may fall`,d=o===void 0||i===void 0?".":`; nineteen batches in twenty between ${Yt(o)} and ${Yt(i)}.`,c=s[0],p=c?r` Most of the doubt is ${c.cause}: ${c.remedy}.`:u;return Na(e)?r`<p class="mind of-plan">
    <strong>Caution</strong> It may come out lye-heavy. ${a}${d}
    ${c?p:"Use a finer scale, a larger batch or a higher superfat."}
  </p>`:r`<p class="aside of-plan">${a}${d} Some fat is left over even at the lowest.${p}</p>`}function Ox(t,e,n){return t.heat?r`${tg(t.heat)} ${Cn(`${n}.heat`,"How the heat is worked out",`${e}.heat`)}`:u}function tg(t){let e=o=>S(jp(l.units,o)),n=t.cooling.map(o=>`${o.shortest_min*60?en(o.shortest_min*60):"at once"} to ${en(o.longest_min*60)} in ${o.in}`);return r`<p class="aside of-plan">
    Water at ${e(t.water_at_c)}: the lye may reach ${e(t.peak_c)}; it boils at
    ${e(t.boils_at_c)}.${n.length?` To cool: ${n.join("; ")}.`:""}${t.at_pour_c===null?"":` Lye and fats meet at about ${e(t.at_pour_c)}.`}
  </p>`}function Fx(t){let e=t.lye_pot;if(!e)return u;let{units:n}=l,o=(i,s,a,d,c="")=>A({key:`pot.${i}`,label:s,note:c,shown:a,size:"weigh",of:`${t.place}.lye_pot.${d}`});return r`<div class="jug">
    <h3>
      One pot for both
      <small>strength ${T(e.strength_percent,1)} %${it(t)&&`; ${it(t)}`}</small>
    </h3>
    ${o("water","In the pot: water, distilled",st(n,Tt(e,"water_")),"water_g")}
    ${e.alkalis.map((i,s)=>o(`alkali.${s}`,`In the pot: ${i.name}`,st(n,Tt(i,""),"down"),`alkalis.${s}.g`))}
    ${o("lye","Lye solution in the pot",st(n,Tt(e,"lye_")),"lye_g",Cx(e))}
    ${e.shares.map((i,s)=>r`${o(`share.${s}`,`Out of it for ${i.batter}`,st(n,Tt(i,"lye_"),"down"),`shares.${s}.lye_g`,`superfat then ${Yt(i.superfat_percent)}`)}
        ${i.top_up_g>0?o(`top_up.${s}`,`and plain water to ${i.batter}`,st(n,Tt(i,"top_up_")),`shares.${s}.top_up_g`):u}
        ${mi(s===0?"pour":"pipe","",t.batch.pieces)}
        ${i.superfat?Xh(i.superfat):u}`)}
    ${e.left_g?r`<p class="aside of-plan">
            ${S(st(l.units,{g:e.left_g,g_text:e.left_g_text,oz_text:e.left_oz_text}))} of lye
            is left in the pot, for the shares are rounded down.
          </p>`:u}
    ${e.heat?tg(e.heat):u}
  </div>`}function Cx(t){if(t.full_pot_g===null)return"";let{g_text:e,oz_text:n,...o}=Tt(t,"lye_"),i=st(l.units,{...o,g:t.full_pot_g,g_text:t.full_pot_g_text,oz_text:t.full_pot_oz_text});return`${S(i)} with the pot: make up with water to that after cooling`}var ji=new Map,Lx=()=>ji.clear(),Ex=t=>typeof t?.owned=="number"?t.owned:void 0;function cu(t){let e=Lt(t,l.files?.moulds);return ji.has(e)||(ji.set(e,void 0),Bx(e)),ji.get(e)}async function Bx(t){try{ji.set(t,Ex(dt((await vt(t)).text))),Q()}catch(e){if(!(e instanceof v))throw e}}async function eg(t,e){let n=cu(t);n!==void 0&&(N("studio",e,n),E(`${n} kept in the studio`),await Wx(Lt(t,l.files?.moulds)),et())}async function Wx(t){let e=await Ct(Ft,t);e.shipped||e.theirs||(bt(e,M(e.now,"/owned",void 0)),await $e(e),Lx())}var Ix={pour:[{name:"overpour",label:"Overpour, of what is in the pieces",unit:"%"},{name:"pot",label:"Left in the pot",unit:"g"},{name:"jugs",label:"Left in the jugs",unit:"g"},{name:"test_piece",label:"Test piece",unit:"g"}],pipe:[{name:"bag",label:"Left in the bag",unit:"g"},{name:"bowl_and_whisk",label:"Left in bowl and whisk",unit:"g"},{name:"tip",label:"Left in the tip",unit:"g",optional:!0},{name:"each_bag_change",label:"Lost at each bag change",unit:"g",optional:!0}]},ng=t=>({run:t,studio:t}),pu=t=>ng(`/losses/${t}`);function mu(t,e){return Ix[t].map(({name:n,label:o,unit:i,optional:s})=>Dt(ng(`/losses/${t}/${n}`),{label:e?`${e}: ${o.toLowerCase()}`:o,unit:i,short:!0,optional:s}))}var Ae=()=>l.plan?.piece.cost?.materials.map(t=>t.name)??[],ut=t=>l.fats.find(e=>e.id===t)?.name??t,fu=8;function Ni({key:t,label:e,offers:n,taken:o,take:i}){let s=`find-${t}`,a=l.finding?.key===t?l.finding.text:"",d=(a.trim()?Hx(a):n).filter($=>!o($)),c=$=>{h({finding:void 0}),i($)},p=a.trim(),m=p!==""&&!o(p)&&!d.some($=>Bt(ut($))===Bt(p)),_=()=>{if(!p)return;let $=d.find(R=>Bt(ut(R))===Bt(p)||Bt(R)===Bt(p)),w=d.length===1?d[0]:void 0;($??w??m)&&c($??w??p)};return r`<div class="picker" role="group" aria-labelledby="${s}-label">
    <p class="question" id="${s}-label">${e}</p>
    <div class="field">
      <label for=${s}>Find it by its name</label>
      <input
        id=${s}
        .value=${a}
        @input=${$=>h({finding:{key:t,text:$.target.value}})}
        @keydown=${$=>{$.key==="Enter"&&_()}}
        autocomplete="off"
        spellcheck="false"
      />
    </div>
    <div class="choice">
      ${d.slice(0,fu).map($=>r`<button type="button" @click=${()=>c($)}>${ut($)}</button>`)}
      ${m?r`<button type="button" @click=${()=>c(p)}>Add "${p}"</button>`:u}
    </div>
    ${d.length>fu?r`<p class="hint">${d.length-fu} more: type a part of the name.</p>`:u}
  </div>`}function Hx(t){let e=Ae(),n=Bt(t).split(/\s+/).filter(Boolean),o=l.fats.filter(s=>$i(s,t)!==void 0).map(({id:s})=>s),i=s=>n.every(a=>Bt(ut(s)).includes(a));return[...new Set([...e.filter(s=>i(s)||o.includes(s)),...o])]}var me=(t,e)=>Object.keys(g(t,e)??{}),og=(t,e)=>`${X(t,e)}-name`;function hu({of:t,at:e,label:n,add:o,blank:i,then:s}){let a=og(t,e),d=()=>{let c=document.getElementById(a),p=c.value.trim();if(!p)return c.focus();if(c.value="",me(t,e).includes(p))return go(s(p)());L(t,`${p} added`,`${e}/${U(p)}`,i,s(p))};return r`<div class="row">
    <div class="field">
      <label for=${a}>${n}</label>
      <input
        id=${a}
        autocomplete="off"
        spellcheck="false"
        @keydown=${c=>{c.key==="Enter"&&d()}}
      />
    </div>
    <button type="button" @click=${d}>${o}</button>
  </div>`}function qi(t,e,n,o=n){let i=s=>ki(M(s,`${e}/${U(n)}`,void 0),e);return r`<div class="tools">
    <button
      type="button"
      aria-label="Remove ${o}"
      @click=${()=>rn(t,`${o} removed`,i,I(og(t,e)))}
    >
      ×
    </button>
  </div>`}var gu={holds:"",paid:""},Rr=t=>({of:"studio",at:`/packs/${U(t)}`,in_order:!0,and:(e,n)=>n?e:ki(e,"/packs")});function jx(t){let e=l.fats.find(n=>n.id===t||n.name===t);return e?[e.id,e.name,e.inci,...e.also_called]:[t]}function ig(t,e){let n=new Set(jx(e).map(o=>o.toLowerCase()));return me("studio",t).find(o=>n.has(o.toLowerCase()))}var Bn=t=>ig("/packs",t),sg=t=>Ae().includes(t)||l.fats.some(e=>e.id===t)?"g":void 0,rg="money packs";function ag(t){return r`${me("studio","/packs").map(e=>Nx(e,t))}
  ${Ni({key:"pack",label:"Which material comes in packs?",offers:Ae(),taken:e=>Bn(e)!==void 0,take:Sr})}`}function Nx(t,e){let n=Rr(t),o=ut(t);return r`<div class="part" role="group" aria-label="Packs of ${o}">
    <p class="part-title">${o}</p>
    ${x(n).map((i,s)=>qx(n,s,o,sg(t),e))}
    <div class="row">
      ${J(n,r`Another pack of ${o}`,()=>q(n,gu,`A pack of ${o}`))}
      ${f({of:"studio",label:"Lost beside the batch",at:`/waste/${U(t)}`,unit:"%",optional:!0,takes_part:!0,short:!0})}
    </div>
  </div>`}function qx(t,e,n,o,i){let s=`${t.at}/${e}`,a=(c,p,m={})=>f({of:"studio",label:p,at:`${s}/${c}`,short:!0,...m}),d=g("studio",`${s}/density`)!==void 0||Et("studio",`${s}/holds`);return r`<div class="row" id=${B(t,e)} role="group" aria-label="Pack ${e+1} of ${n}">
    ${a("holds","One pack holds",{unit:o,hint:o?void 0:"Such as 50 pieces, or 1 kg"})}
    ${a("paid","Paid for it",{told:i})} ${Ux(s)}
    ${a("as_of","Day of the price",{optional:!0,hint:"Such as 2026-10-01"})}
    ${d?a("density","Density of what it holds",{unit:"g/ml",optional:!0}):u}
    ${z(t,e,`pack ${e+1} of ${n}`)}
  </div>`}function Ux(t){let e=`${t}/from`,n=me("studio","/sellers");return n.length?yt({label:"From",of:"studio",at:e,answers:n.map(o=>[o,o]),unsaid:"not given",optional:!0}):f({of:"studio",label:"From",at:e,optional:!0,short:!0})}function Sr(t){let e=`/packs/${U(t)}`,[n,o]=[`/prices/${U(t)}`,`/money/prices/${U(t)}`],i=So().length?g("run",o):void 0,s=[i,g("studio",n)].flatMap(Jx),a=s.length?[...s,gu]:[gu];Ve([["studio",c=>zx(M(xi(c,[n]),e,a))],...i!==void 0?[["run",c=>xi(c,[o])]]:[]]),E(s.length?`The price of ${ut(t)} is its first pack now`:`${ut(t)} added`),de("studio",rg),G(sn(B(Rr(t),a.length-1)))}var zx=t=>b(t,"/currency")?t:M(t,"/currency",_r());function Jx(t){let e=b(t,"/paid");if(!e)return[];let n=b(t,"/confirmed");return[{holds:b(t,"/for")??"",paid:e,...n===void 0?{}:{confirmed:n}}]}var lg=t=>r`<button
    type="button"
    aria-label="Another pack size of ${ut(t)}"
    @click=${()=>Sr(t)}
  >
    Another pack size
  </button>`;function ug(t){let e=Bn(t),n=ft("studio",Rr(e).at).length,o=()=>{de("studio",rg),G(sn(B(Rr(e),0)))};return r`<div class="row">
    <p>${ut(t)}: by ${n===1?"its pack":`its ${n} packs`}</p>
    <button type="button" aria-label="To its packs: ${ut(t)}" @click=${o}>To its packs</button>
  </div>`}function dg(){let t=e=>`/have/${U(e)}`;return r`${me("studio","/have").map(e=>{let n=sg(e),o=n?void 0:"Such as 12 pieces, or 1 kg";return r`<div class="row">
      ${f({of:"studio",label:ut(e),at:t(e),unit:n,hint:o,short:!0})}
      ${qi("studio","/have",e,ut(e))}
    </div>`})}
  ${Ni({key:"have",label:"Which material stands on the shelf?",offers:Ae(),taken:e=>ig("/have",e)!==void 0,take:e=>L("studio",`${ut(e)} added`,t(e),"",nt("studio",t(e)))})}`}var cg=({key:t})=>`money ${t}`;function fg(){if(!Ro())return u;let t=Kx(_r());return!On()&&t.some(e=>l.open.has(`folded studio ${cg(e)}`))&&hr(),r`<section class="questions money" aria-label="Buying and selling">
    <h3>Buying and selling</h3>
    ${Vx()}
    <div class="folds">
      ${t.map(e=>P({of:"studio",name:cg(e),pointers:e.pointers,summary:r`<span>${e.title}${e.told?r`<small>${e.told}</small>`:u}</span>`,body:e.body}))}
    </div>
  </section>`}var Vx=()=>g("run","/money/currency")===void 0?u:r`<div class="row">
        ${gn({label:"Currency of the studio",at:"/currency",optional:!0,short:!0})}
      </div>`,gn=t=>f({...t,of:"studio"}),Ar=t=>me("studio",t).map(ut).join(", "),_u=t=>["/work",t].join("/");function Kx(t){let e=(i,s,a={})=>gn({label:s,at:i,told:t,short:!0,...a}),n=(i,s)=>e(i,s,{optional:!0,takes_part:!0}),o=(i,s="")=>{let a=D("studio",i);return a&&`${a}${s}`};return[{key:"packs",title:"Packs",pointers:["/packs","/waste"],told:Ar("/packs"),body:()=>ag(t)},{key:"sellers",title:"Sellers",pointers:["/sellers"],told:Ar("/sellers"),body:()=>Qx(e)},{key:"have",title:"On the shelf",pointers:["/have"],told:Ar("/have"),body:dg},{key:"packaging",title:"Packaging",pointers:["/packaging"],told:x(Fo).map(i=>ut(String(b(i,"/material")))).join(", "),body:Yx},{key:"work",title:"Work",pointers:["/work"],told:o(_u("paid_an_hour"),` ${t} an hour`),body:()=>Xx(e)},{key:"overhead",title:"Overhead",pointers:["/overhead"],told:o("/overhead/each_batch",` ${t} each batch`),body:()=>r`<p class="hint">Rent, power, cleaning and the like.</p>
          <div class="row">
            ${n("/overhead/each_batch","Each batch")} ${n("/overhead/each_piece_made","Each piece made")}
          </div>`},{key:"tax",title:"Tax on sales",pointers:["/tax"],told:o("/tax/rate"),body:tT},{key:"fees",title:"Fees of selling",pointers:["/fees"],told:o("/fees/of_price"," of the price"),body:()=>r`<div class="row">
          ${gn({label:"Of what the buyer pays",at:"/fees/of_price",unit:"%",optional:!0,takes_part:!0,short:!0})}
          ${n("/fees/each_order","Each order")}
        </div>`},{key:"asking",title:"Ways of selling",pointers:["/asking","/price_endings"],told:Ar("/asking"),body:()=>eT(e)}]}function Qx(t){let e=(n,o)=>`/sellers/${U(n)}/${o}`;return r`${me("studio","/sellers").map(n=>r`<div class="part" role="group" aria-label=${n}>
        <div class="part-head">
          <p class="part-title">${n}</p>
          ${qi("studio","/sellers",n)}
        </div>
        <div class="row">
          ${t(e(n,"postage"),"Postage of an order",{optional:!0,hint:"0 if you fetch it"})}
          ${t(e(n,"postage_free_from"),"Free from",{optional:!0})}
          ${gn({label:"From ordering to having it",at:e(n,"lead_time"),unit:"days",optional:!0,short:!0})}
        </div>
      </div>`)}
  ${hu({of:"studio",at:"/sellers",label:"Another seller, by name",add:"Add the seller",blank:{},then:n=>nt("studio",e(n,"postage"))})}`}var Fo={of:"studio",at:"/packaging"},Gx=t=>!Ae().includes(t)&&!l.fats.some(e=>e.id===t);function Yx(){let t=e=>x(Fo).some(n=>b(n,"/material")===e);return r`<p class="hint">What goes round each piece that is sold. Its price is that of its pack.</p>
    ${x(Fo).map((e,n)=>Zx(String(b(e,"/material")??""),n))}
    ${Ni({key:"packaging",label:"What goes round a piece?",offers:["/packs","/prices"].flatMap(e=>me("studio",e)).filter(Gx),taken:t,take:e=>q(Fo,{material:e,each_piece:""},e)})}`}function Zx(t,e){let n=Bn(t)!==void 0||g("studio",`/prices/${U(t)}`)!==void 0;return r`<div class="row" id=${B(Fo,e)}>
    ${gn({label:`${ut(t)}, each piece`,at:`/packaging/${e}/each_piece`,unit:"pieces",short:!0,hint:"How many, or a mass such as 3 g"})}
    ${n?u:r`<button type="button" aria-label="Say its price: ${t}" @click=${()=>Sr(t)}>
            Say its price
          </button>`}
    ${z(Fo,e,t)}
  </div>`}function Xx(t){let e=g("studio","/work")!==void 0,n=(o,i,s)=>gn({label:i,at:_u(o),unit:s,optional:!0,takes_part:!0,short:!0});return r`<div class="row">
      ${t(_u("paid_an_hour"),"Paid an hour",{optional:!0,takes_part:!0,is_due:e})}
      ${n("each_batch","Each batch","min")} ${n("each_piece_made","Each piece made","s")}
      ${n("each_tray_fill","Each tray fill","min")} ${n("each_piece_packed","Each piece packed","s")}
    </div>
    ${H("studio","/work")}`}var pg=(t,e)=>k({of:"studio",question:t,at:`/tax/${e}`,chosen:D("studio",`/tax/${e}`)||void 0,answers:[["with tax","With tax"],["without tax","Without tax"]],puts:n=>n}),tT=()=>r`<p class="hint">Where you charge it and get back what you pay of it. If you are exempt, leave it out.</p>
    ${ue({of:"studio",at:"/tax",name:"the tax",title:"Tax on sales",add:"I charge tax",blank:{rate:""},body:()=>r`<div class="row">${gn({label:"Rate",at:"/tax/rate",unit:"%",short:!0})}</div>
          ${pg("The prices you pay are","prices_paid")} ${pg("The prices you ask are","prices_asked")}`})}`,mg=[["margin","A margin"],["markup","A markup"],["price","A price as set"]];function eT(t){let e=n=>`/asking/${U(n)}`;return r`${me("studio","/asking").map(n=>nT(n,e(n),t))}
  ${hu({of:"studio",at:"/asking",label:"Another way, such as retail",add:"Add the way",blank:{},then:n=>nt("studio",e(n))})}
  ${oT(t)}`}function nT(t,e,n){let o=g("studio",e)??{},i=mg.map(([a])=>a).find(a=>o[a]!==void 0),s=a=>gn({label:a,at:`${e}/${i}`,unit:"%",short:!0});return r`<div class="part" role="group" aria-label=${t}>
    <div class="part-head">
      <p class="part-title">${t}</p>
      ${qi("studio","/asking",t)}
    </div>
    ${k({of:"studio",question:"Its price comes by",at:e,chosen:i,answers:mg,puts:a=>({[a]:""}),then:a=>`${e}/${a}`})}
    ${i?r`<div class="row">
            ${i==="price"?n(`${e}/price`,"Price of a piece"):s(i==="margin"?"Margin, of the price":"Markup, on the cost")}
          </div>`:u}
  </div>`}var Ui={of:"studio",at:"/price_endings"},oT=t=>r`<p class="question">A price ends in</p>
    ${x(Ui).map((e,n)=>r`<div class="row" id=${B(Ui,n)}>
          ${t(`/price_endings/${n}`,`Ending ${n+1}`,{hint:"Such as 0.90"})}
          ${z(Ui,n,`ending ${n+1}`)}
        </div>`)}
    ${J(Ui,"Add an ending",()=>q(Ui,"","An ending"))}`;var iT=t=>gt()&&Bn(t)===void 0&&So().length>0;function hg(){if(!Ro())return r`<button type="button" @click=${sT}>Add what you paid</button>`;let t=(e,n)=>{let o=`/${U(e)}/${n}`;return{run:gr.run+o,studio:gr.studio+o}};return r`<div class="row">
      ${Dt(Se,{label:"Currency",short:!0,hint:"Its ISO 4217 code, such as EUR."})}
    </div>
    <div class="prices">
      ${Ae().map(e=>Bn(e)===void 0||g("run",t(e,"paid").run)!==void 0?r`<div class="row">
              ${Dt(t(e,"paid"),{label:`${ut(e)}, paid`,optional:!0,takes_part:!0,short:!0})}
              ${Dt(t(e,"for"),{label:`for how much ${ut(e)}`,unit:"g",optional:!0,takes_part:!0,short:!0})}
              ${iT(e)&&Te(t(e,"paid"))?lg(e):u}
            </div>`:ug(e))}
    </div>
    ${Ae().length?u:r`<p class="hint">The materials stand here as soon as there are figures.</p>`}`}function sT(){let t=gt()?"studio":"run",e=t==="studio"?Se.studio:Se.run;L(t,"Prices added",e,"",nt(t,e))}var Co=t=>({run:t,studio:t}),$u=t=>({run:`/pipe/${t}`,studio:`/${t}`}),rT=Co("/scales"),gg=Co("/spoilage"),aT=Co("/pots");function bu(t){return It({name:"studio",title:"My studio",result:pt(lT()),about:[["studio",""],["run","/losses"],["run","/scales"],["run","/spoilage"],["run","/pots"],["run","/money"],["run","/pipe/bowl"],["run","/pipe/bag_holds"],["run","/pipe/lye_spoon"]],form:()=>uT(t)})}function lT(){let t=l.beside.studio?.file;return t?r`What is the same in every run, kept in ${t}.`:r`Scales, losses and whatever else is the same in every run; kept in this run so far.`}function uT(t){let e=dT(t),n=e.flatMap(o=>o.all);return r`${gt()?u:r`<p class="choice">
              <button type="button" class="strong" @click=${()=>{ml(n)}}>
                Keep these in my studio
              </button>
            </p>
            <p class="hint">
              They go into studio.json beside your runs; every run then takes from it what it does not say. Packs and
              sellers, your work, tax, fees and ways of selling can then be kept there too.
            </p>`}
    <div class="studio-sections">
      ${e.map(({title:o,all:i,body:s})=>r`<section class="questions" aria-label=${o}>
            <div class="part-head">
              <h3>${o}</h3>
              ${$o(o,i)}
            </div>
            ${s()}
          </section>`)}
    </div>
    ${gt()?fg():u}`}function dT(t){let e=Ut(),n=[{title:"Scales",all:[rT],body:cT},{title:"Losses",all:[pu("pour"),...e?[pu("pipe")]:[]],body:()=>pT(e,t)},{title:"Rejects",all:[gg],body:fT},{title:"Pot and lye jug",all:[aT],body:hT},{title:"Moulds owned",all:_g().map(({shared:o})=>o),body:_T},{title:"Prices paid",all:So(),body:hg}];return e&&n.splice(4,0,{title:"Bowl, bag, spoon",all:["bowl","bag_holds","lye_spoon"].map($u),body:gT},{title:"Weigh-cups",all:[],body:Lm}),gt()&&g("run","/label")===void 0&&n.push({title:"Where it is sold",all:[Oo],body:ru}),n}function cT(){let t=(e,n)=>r`${Dt(Co(`/scales/${e}/step`),{label:`${n}, smallest step`,unit:"g",short:!0,term:e==="large"?"scale_step":void 0})}
    ${Dt(Co(`/scales/${e}/most`),{label:`${n}, most it weighs`,unit:"g",short:!0})}`;return r`<div class="row">${t("large","Large scale")} ${t("fine","Fine scale")}</div>
    <p class="hint">With one scale only, give it in both places.</p>`}function pT(t,e){return r`<div class="row">
      ${mu("pour",t?"Base":void 0)} ${t?mu("pipe","Topping"):u}
    </div>
    ${e?mT(e):u}`}function mT({pour:t,pipe:e,...n}){let o=it({pour:t,pipe:e,...n}),i=(s,{in_pieces_g:a,lost_g:d})=>`${s}: ${S(C(l.units,a))} in the pieces, ${S(C(l.units,d))} lost.`;return r`<p class="aside of-plan">
    ${o?`In ${o}. `:""}${i("Base",t)} ${e?i("Topping",e):""}
  </p>`}var fT=()=>Dt(gg,{label:"Rejects",unit:"%",short:!0,optional:!0,term:"rejects"});function hT(){let t=(e,n,o)=>Dt(Co(`/pots/${e}`),{label:n,unit:"l",optional:!0,takes_part:!0,short:!0,hint:o});return r`<div class="row">
    ${t("holds","Pot for the base holds","To the brim; filled to two thirds. Left blank, it sets no limit.")}
    ${t("lye_jug","Lye jug holds","To the brim; filled to half.")}
  </div>`}function gT(){let t=(n,o,i,s=!1)=>Dt($u(n),{label:o,unit:i,short:!0,optional:!0,is_due:s,takes_part:n!=="bag_holds"}),e=n=>Te($u(n))!==void 0;return r`<div class="row">
    ${t("bowl/holds","Bowl holds","l",e("bowl/whisk_needs"))}
    ${t("bowl/whisk_needs","Smallest unwhipped amount the whisk reaches","ml")}
    ${t("bag_holds","One bag holds","ml")}
    ${t("lye_spoon/holds","Lye spoon holds","ml",e("lye_spoon/time_between"))}
    ${t("lye_spoon/time_between","From one spoonful to the next","s",e("lye_spoon/holds"))}
  </div>`}function _g(){return["/pour",...x($t).map((e,n)=>Mo(n))].flatMap(e=>{let n=D("run",`${e}/mould`);return n?[{mould:n,shared:{run:oh(e),studio:`/moulds_owned/${U(fl(n))}`}}]:[]})}function _T(){return r`<div class="row">
    ${_g().map(({mould:t,shared:e})=>{let n=l.files?.moulds.find(s=>s.file===t)?.name??t,o=Te(e)===void 0?cu(t):void 0,i=()=>{eg(t,`/moulds_owned/${U(fl(t))}`)};return r`${Dt(e,{label:`${n}, owned`,count:!0,optional:!0,short:!0,hint:o===void 0?"Else as many as the mould's own file says.":`The mould's own file says ${o}.`})}
      ${o!==void 0&&gt()?r`<button type="button" aria-label="Move the ${o} of ${n} into my studio" @click=${i}>
              Move it into my studio
            </button>`:u}`})}
  </div>`}function wu(t){let e=t&&ao(t);return r`${bT(t)}
    <div class="set-up">${$g(e)} ${$T()} ${bu(e)}</div>`}function $g(t){return r`${Uh(t)} ${Ut()?Jh(t):u}
  ${Ah()?Mh(t):u} ${Ph()?Fh(t):u}
  ${Xt()?Bh(t):u} ${Zh(t)} ${su()?Wh(t?.whole):u}`}function $T(){return r`<section class="lane unused" aria-label="What may be added">
    <div class="choice">
      ${Ut()?u:r`<button type="button" @click=${Em}>Add a topping</button>${Bm()}`}
      ${hh()} ${rh()}
      ${su()?u:r`<button type="button" @click=${bh}>Draft the label</button>`}
    </div>
  </section>`}function bg(t=u){return r`<div class="row">
    ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})}
    ${_o("Mould","/pour/mould",l.files?.moulds)}
    ${_o("Base","/pour/formula",l.files?.formulas)}
    ${Ut()?_o("Topping","/pipe/formula",l.files?.formulas):u} ${t}
  </div>`}function bT(t){return r`<section class="order-of" aria-labelledby="run-title">
    ${typeof l.run.now.note=="string"?r`<p class="aside">${l.run.now.note}</p>`:u}
    ${bg(t?wT(t):u)}
    <div class="batches">${t?yh(t):u} ${nu()}</div>
  </section>`}function wT(t){let{sell:e,make:n,fillings:o,cavities:i,casts:s,batches:a}=t.pieces,d=xt(t)?`${a} batches, ${ct(o,"filling")}`:Ms(o,i);return A({key:"pieces.make",label:t.cut?"Bars to make":"Pieces to make",note:s!==n?`${s} ${t.cut?"loaves":"casts"}, ${d}`:d,shown:[String(n),e===n?"":`for ${e}`],size:"weigh",of:"pieces.make"})}function yT(){let e=(l.formulas.apart?["apart"]:["pour","pipe"]).filter(n=>l.formulas[n]).filter(vT);return[Zt({part:"Run"},()=>[bg(),nu()]),...e.map(n=>Zt({part:String(l.formulas[n].now.name||"Formula")},()=>bf(n))),$g(),bu()]}var vT=(t,e,n)=>n.findIndex(o=>l.formulas[o]===l.formulas[t])===e;Gp(yT);var kT={danger:"\u26A0 Danger",stop:"Stop",warning:"Warning",caution:"Caution",note:"Note"};function wg(t){let e=s=>s.severity==="danger",n=[...t.cautions.filter(e),...t.cautions.filter(s=>!e(s))],o=s=>r`<ul>
      ${s.map(a=>r`<li class=${a.severity}><strong>${kT[a.severity]??a.severity}</strong> ${a.text}</li>`)}
    </ul>`,i=n.filter(s=>s.severity==="note");return r`<section class="watch" aria-labelledby="watch-title">
    <h2 id="watch-title">Cautions <small>worst first</small></h2>
    ${o(n.filter(s=>s.severity!=="note"))}
    ${i.length?r`<details ?open=${i.length<3}>
            <summary>${i.length} ${i.length===1?"note":"notes"}</summary>
            ${o(i)}
          </details>`:u}
  </section>`}function yg(t,e){let n=t?.batches.findIndex(({numbers:a})=>a.includes(e))??-1;if(!t||n<0)return;let o=t.batches[n],i=e===1,s=o.weigh_out.filter(({vessel:a})=>a!=="melt"||i);return{plan:t,batch:o,place:`batches.${n}`,vessels:s,mark:o.mark}}function Lo(t){let e=eo(t);return e?.finished_at?"done":e||no(t)?"under way":"not begun"}var xT=()=>Math.max(l.plan?.pieces.batches??0,...l.bench.batches.map(({batch:t})=>t));function TT(t){let{chosen:e}=l.bench;if(e!==void 0&&e<=t)return e;let n=Array.from({length:t},(i,s)=>s+1),o=i=>n.find(s=>Lo(s)===i);return o("under way")??o("not begun")??1}function yu(){let t=xT(),e=TT(t),n=eo(e),o=yg(l.plan,e);return{number:e,of:t,kept:n,planned:o,weights:n?yg(n.plan,e):o}}var Ie=({kept:t})=>!t&&l.is_old,Eo=({plan:t,batch:e})=>t.cautions.filter(({severity:n,batch_pieces:o})=>n==="danger"&&(o===void 0||o===e.pieces));var RT=6,ST={"not begun":"\u25CB","under way":"\u25D0",done:"\u25CF"};function kg({number:t,of:e}){if(e<2)return u;let n=Array.from({length:e},(i,s)=>s+1),o=i=>`Batch ${i}, ${Lo(i)}`;return e>RT?r`<select
      aria-label="Which batch is weighed"
      @change=${i=>vg(Number(i.target.value))}
    >
      ${n.map(i=>r`<option value=${i} ?selected=${i===t}>${o(i)}</option>`)}
    </select>`:rt("Which batch is weighed",String(t),n.map(i=>[String(i),r`<span class="status" aria-hidden="true">${ST[Lo(i)]}</span> ${i}<small>
          ${Lo(i)}</small
        >`]),i=>vg(Number(i)))}function vg(t){Nc(t),E(`Batch ${t}, ${Lo(t)}`)}var Pr="";function xg(t){let{kept:e,number:n}=t;if(!e)return u;if(e.finished_at)return AT(t,e.finished_at);let i=(t.weights?.vessels??[]).flatMap(a=>a.rows).filter(({key:a})=>!Pn(n,a).is_done).length,s=()=>i?Tg(e.id):void xa(n);return r`<div class="batch-end">
    <p class="aside">Begun ${Sg(e.begun_at)}; its weights stay as they were then.</p>
    ${Pr===e.id?Rg(`${i===1?"1 row is":`${i} rows are`} not ticked.`,"The batch is done all the same",()=>{xa(n)}):r`<button type="button" class=${i?"":"strong"} ?disabled=${no(n)} @click=${s}>
            This batch is done
          </button>`}
  </div>`}function AT({kept:t,number:e},n){let{id:o}=t;return r`<div class="batch-end">
    <p><b>✓ This batch is done</b>, ${Sg(n)}.</p>
    ${Pr===o?Rg("What was ticked of it will be put away.","Put it away and weigh this batch once more",()=>{ii(e)}):r`<button type="button" @click=${()=>Tg(o)}>Start this batch anew</button>`}
  </div>`}function Tg(t){Pr=t,Q(),G(I("batch-stays"))}function Rg(t,e,n){let o=()=>{Pr="",Q(),G(I("run-title"))};return r`<p><b>${t}</b></p>
    <div class="row">
      <button type="button" class="strong" id="batch-stays" @click=${o}>Leave it as it is</button>
      <button type="button" @click=${()=>(o(),n())}>${e}</button>
    </div>`}var PT=new Intl.DateTimeFormat("en-GB",{day:"numeric",month:"long",hour:"2-digit",minute:"2-digit"}),Sg=t=>PT.format(new Date(t));var DT={pour:"Base",pipe:"Topping"},Ag=t=>new Map(t.flatMap(e=>e.rows.map(n=>[n.key,{row:n,vessel:e}])));function Pg(t,e){let[n,o]=[Ag(t),Ag(e)],i=[...t,...e].some(({batter:p})=>p==="pipe"),s,a=({row:p,vessel:m})=>{let _=!i||m.batter===s;return s=m.batter,(_||!s?"":`${DT[s]}: `)+p.name+(p.adding?` for ${p.adding}`:"")},d=[...n].flatMap(([p,m])=>{let _=o.get(p)?.row;return _?.shown===m.row.shown?[]:[`${a(m)} ${m.row.shown}, ${_?`now ${_.shown}`:"now left out"}`]}),c=[...o].filter(([p])=>!n.has(p)).map(([,p])=>`${a(p)}, now ${p.row.shown}`);return[...d,...c]}var vu=3,ku=new Map,xu="";function MT(t){let{kept:e,weights:n,planned:o,of:i}=t;if(!e||e.finished_at||!n)return;let{complaint:s}=l;if(s&&!Lu(s))return{told:[],dangers:[],refusal:"what is wrong stands above",mark:K(s)};if(!o){if(!l.plan)return;let p=i>1?`the run has no batch ${t.number} any more`:"the run has no such batch any more";return{told:[],dangers:[],refusal:p,mark:p}}if(o.mark===n.mark)return;let a=Pg(n.vessels,o.vessels),d=new Set(Eo(n).map(({text:p})=>p)),c=Eo(o).flatMap(({text:p})=>d.has(p)?[]:[p]);return a.length||c.length?{told:a,dangers:c,mark:o.mark}:void 0}function Dg(t){let e=MT(t),{kept:n}=t;if(!e||!n)return u;if(ku.get(n.id)===e.mark)return CT(n.id);let o=e.dangers.length>0||e.refusal!==void 0;return r`<div class="changed ${o?"red":""}" role=${o?"alert":"status"}>
    <p>
      <b>The run has changed since this batch was begun; its weights stay.</b>
      ${OT(e)}
    </p>
    ${FT(e)}
    ${e.dangers.map(i=>r`<p class="danger"><strong>${Ce}</strong> As it is now: ${i}</p>`)}
    ${xu===n.id?BT(t):LT(t,e)}
  </div>`}function OT({told:t,refusal:e}){if(e!==void 0)return r`<strong>No weights can be given as it is now:</strong> ${e}.`;let n=t.length-vu;return r`${t.slice(0,vu).join("; ")}${n>0?` and ${n} more.`:"."}`}var FT=({told:t})=>t.length>vu?r`<details>
        <summary>All ${t.length} changes</summary>
        <p>${t.join("; ")}.</p>
      </details>`:u;function CT(t){return r`<div class="changed passed">
    <p>The run has changed since this batch was begun; its weights stay.</p>
    <button type="button" @click=${()=>(ku.delete(t),Q())}>What has changed</button>
  </div>`}function LT(t,{mark:e,refusal:n}){let{id:o}=t.kept;return r`<div class="row">
    <button type="button" class="strong" @click=${()=>{ku.set(o,e),Q(),G(I("run-title"))}}>Keep weighing</button>
    ${n===void 0?r`<button type="button" @click=${()=>ET(t)}>Start this batch anew</button>`:u}
  </div>`}function ET(t){let{ticks:e,weigh_cup:n,id:o}=t.kept;if(!Object.keys(e).length&&n===void 0)return void ii(t.number);xu=o,Q(),G(I("keep-weighing"))}function BT(t){let e=Object.keys(t.kept.ticks).length,n=()=>{xu="",Q(),G(I("run-title"))},o=()=>{n(),ii(t.number)};return r`<p>
      <b>${e===1?"The 1 tick":`All ${e} ticks`} of this batch will be put away</b>, and what is in the
      vessels already was weighed by the old weights.
    </p>
    <div class="row">
      <button type="button" class="strong" id="keep-weighing" @click=${n}>Keep weighing</button>
      <button type="button" @click=${o}>Put the ticks away and start anew</button>
    </div>`}var Mg=({text:t})=>r`<p class="danger"><strong>${Ce}</strong> ${t}</p>`;function Og(t){let e=new Set(l.dangers.run.map(({text:o})=>o)),n=Eo(t).filter(({text:o})=>!e.has(o));return n.length?r`<div class="dangers" role="alert">${n.map(Mg)}</div>`:u}var WT=({vessel:t})=>["lye","lye_pot","share"].includes(t),IT=({batter:t},e)=>!t||!e.batter||t===e.batter;function Fg(t,e){if(!WT(e))return u;let n=Eo(t).filter(o=>IT(o,e));return n.length?r`<div class="dangers">${n.map(o=>r`${Mg(o)} ${HT(o)}`)}</div>`:u}function HT({batter:t,topic:e}){return!t||e==="heat"?r`<button type="button" class="to-cause" @click=${NT}>To the cautions</button>`:r`<button type="button" class="to-cause" @click=${()=>jT(t)}>
    To the superfat of the ${t==="pour"?"base":"topping"}
  </button>`}function jT(t){Gt(t),requestAnimationFrame(()=>G(nt(t,"/superfat")))}function NT(){h({view:"watch"}),G(I("watch-title"))}var Tu=(t,e)=>r`<p class="do ${Ie(t)?"old":""}">${e}</p>`;function Cg(t,{batch:e,plan:n}){let{below_brim_mm:o,mass_each_g:i}=e.pour,s=o<.05?"Pour to the brim":`Pour to ${S(_t(l.units,o))} below the brim`;return Tu(t,r`${s}, <b>${S(C(l.units,i))}</b> ${n.cut?"the loaf":"each"}.`)}function Lg(t,{batch:e}){let n=e.pipe?.whippings[0]?.readings.find(o=>o.planned);return n?Tu(t,r`Whip until the level weigh-cup holds <b>${S(C(l.units,n.net_g))}</b>.`):u}function Eg(t,{batch:e}){let{pipe:n}=e;return n?Tu(t,r`Pipe <b>${T(n.volume_each_ml,0)} ml</b> on each, ${S(C(l.units,n.mass_each_g))} at the
      planned whipped density.`):u}function Bg(t,{shown:e,beside:n}){if(t==="both")return[e,n];let o=t==="us"?"oz":"g";return[ve(n)===o?n:e,""]}function Wg({batch:t,plan:e,place:n},o,i){switch(o.vessel){case"fats":case"lye":case"batter":return qT(o,i,t,n);case"layers":return UT(i,t.pour.layers??[],`${n}.pour.layers`);case"dust":return Ru(i.name,t.dust,`${n}.dust`);case"lye_pot":return i.role==="water"?`${n}.lye_pot.water_g`:Ru(i.name,t.lye_pot?.alkalis??[],`${n}.lye_pot.alkalis`);case"melt":{let s=e.decorations.length===1?0:-1;return s<0?void 0:`decorations.${s}.make_g`}case"share":return}}function Ru(t,e,n){let o=e.findIndex(i=>i.name===t);return o<0?void 0:`${n}.${o}.g`}function qT(t,e,n,o){let i=Number(/^pipe\.(\d+)\./.exec(t.key)?.[1]??1)-1,[s,a]=t.batter==="pipe"?[n.pipe?.whippings[i],`${o}.pipe.whippings.${i}`]:[n.pour,`${o}.pour`],d=(s?.ingredients??[]).findIndex(({name:c,goes_into:p})=>c===e.name&&p===t.vessel);return d<0?void 0:`${a}.ingredients.${d}.g`}function UT(t,e,n){let o=(e??[]).findIndex(({name:i})=>i===(t.adding??t.name));return o<0||!t.adding?o<0?void 0:`${n}.${o}.g`:Ru(t.name,e[o].colours,`${n}.${o}.colours`)}function Su(t,e,n){let o=n.words.filter(({is_order:s})=>s),i=n.rows.every(({key:s})=>Pn(t.number,s).is_done);return r`<section class="vessel ${n.vessel} ${i?"filled":""}" aria-labelledby=${Ig(n)}>
    <div class="vessel-head">
      <h3 id=${Ig(n)}>
        ${n.title}${n.times?r` <b>${n.times} times</b>`:u}${n.day_before?r` <b>the day before</b>`:u}${i?r` <span class="all-in">✓ all in</span>`:u}
      </h3>
      ${o.map(({text:s})=>r`<p class="vessel-order">${s}</p>`)}
    </div>
    ${Fg(e,n)}
    ${mr(n.rows,({key:s})=>s,s=>zT(t,e,n,s))}
  </section>`}var Ig=({key:t})=>`vessel-${t.replaceAll(".","-")}`;function zT(t,e,n,o){let{is_done:i,is_waiting:s}=Pn(t.number,o.key),[a,d]=Bg(l.units,o),c=Ie(t),m=[o.adding?`for ${o.adding}`:"",o.note].filter(Boolean).join(", ");return r`<div class="weigh ${o.role} ${i?"done":""} ${s?"waiting":""}">
    <label>
      <input
        type="checkbox"
        .checked=${j(i)}
        ?disabled=${t.kept?.finished_at!==void 0}
        @change=${_=>JT(t,e,o,_.target)}
      />
      <span class="name"
        >${o.name}${m?r` <small>${m}</small>`:u}${s?r` <small class="not-kept">not kept yet</small>`:u}</span
      >
      ${o.running_shown?r`<span class="running">total ${o.running_shown}</span>`:u}
      <span class="amount ${c?"old":""}"><b>${a}</b>${d?r` <i>${d}</i>`:u}</span>
    </label>
    ${VT(t,e,n,o)}
  </div>`}function JT(t,{mark:e},n,o){if(!Ie(t))return Ic(t.number,e,n.key,o.checked);o.checked=!o.checked,E("Not ticked: what is struck through is not to be weighed.")}function VT(t,e,n,o){let{planned:i}=t,s=i&&i.mark===e.mark?Wg(i,n,o):void 0;if(s===void 0)return u;let a=`weigh.${t.number}.${o.key}`,d=l.open.has(a),c=`sum-${a.replaceAll(/[^\w]/g,"-")}`;return r`<button
      type="button"
      class="ask-how"
      aria-label="How the weight of ${o.name} is calculated"
      aria-expanded=${d?"true":"false"}
      aria-controls=${d?c:u}
      @click=${()=>Kt("open",a)}
    >
      ${d?"\u2013":"="}
    </button>
    ${d?r`<div class="sum" id=${c}>${al(s)}</div>`:u}`}function Au(t,e){let n=t.flatMap(({title:o,words:i})=>i.filter(({is_order:s})=>!s).map(({text:s})=>({title:o,text:s})));return r`<details class="to-know">
    <summary>Superfat, heat and more to know</summary>
    ${e} ${n.map(({title:o,text:i})=>r`<p><b>${o}:</b> ${i}</p>`)}
  </details>`}function Hg(t,e){let{planned:n,whip_today:o}=l;return!e||!n?void 0:(o?.of===n&&o.batch===t&&o.reading===e||KT(t,e),o?.batch===t&&o.reading===e?o:void 0)}var Pu=!1;async function KT(t,e){let{planned:n}=l;if(Pu||!n)return;Pu=!0;let o={of:n,batch:t,reading:e},i={holds:b(n.run,"/pipe/whip/holds")??"",net:e};try{let s=await Ji({...n,run:M(n.run,"/pipe/whip_now",i)});h({whip_today:{...o,...QT(s,t)}})}catch(s){if(!(s instanceof v))throw s;h({whip_today:{...o,complaint:K(s.complaint)}})}finally{Pu=!1}}function QT(t,e){let n=t.batches.find(({numbers:o})=>o.includes(e));return n?{mark:n.mark,pieces:n.pipe?.whippings.map(o=>o.pieces_now)}:{}}var Mu,Du,GT=t=>Mu??(ve(t)==="oz"||!t&&l.units==="us"?"oz":"g");function jg(t,e){let n=e.batch.pipe?.whippings??[];if(!n.some(a=>a.readings.length))return u;let o=va(t.number),i=GT(o),s=t.kept?.finished_at!==void 0;return r`<div class="cup">
    <div class="labelled"><label for="weigh-cup">Today's weigh-cup, net</label>${Le("weigh_cup")}</div>
    ${le("weigh_cup")}
    <div class="cup-row">
      <input
        id="weigh-cup"
        inputmode="decimal"
        autocomplete="off"
        .value=${j(Du??o)}
        ?disabled=${s}
        @input=${a=>Du=a.target.value}
        @change=${a=>ZT(t,e,a.target.value,i)}
      />
      ${rt("Unit of the weigh-cup",i,[["g","g"],["oz","oz"]],YT)}
    </div>
    ${XT(t,e,n,o)} ${e0(e,n)}
  </div>`}function YT(t){Mu=t,Q()}function ZT(t,{mark:e},n,o){Du=void 0;let i=tn(n)?`${n.trim()} ${o}`:n.trim();if(Mu=void 0,i===va(t.number))return Q();if(Ie(t))return E("Not taken: the weights are not those of what is typed."),Q();Hc(t.number,e,i)}function XT(t,e,n,o){if(!o)return u;let i=Hg(t.number,o);return i?i.complaint!==void 0?r`<p class="alarm" role="status">${i.complaint}</p>`:i.mark!==e.mark?r`<p class="today" role="status">The run has changed since this batch was begun: go by the table.</p>`:r`<div class="today" role="status">
    ${n.map((s,a)=>r`<p>${t0(s,i.pieces?.[a]??null)}</p>`)}
  </div>`:r`<p class="today" role="status">Asking how far this bowl goes ...</p>`}function t0({pieces:t,count:e},n){if(n===null)return u;let o=e>1?"Each of these bowls pipes":"This bowl pipes",i=t-n;return r`${o} <b>${ct(n,"piece")}</b> now.
    ${i>0?r`<strong>Short by ${i} at this whip.</strong>`:`Enough for the ${t} to make.`}`}function e0(t,e){let n=t.plan.cut?"casts":"pieces";return r`<details class="cup-table">
    <summary>If the weigh-cup reads something else</summary>
    ${e.map(o=>r`<table class="readings">
          <caption>
            A bowl for ${o.pieces}
          </caption>
          <thead>
            <tr>
              <th scope="col">net</th>
              <th scope="col">overrun</th>
              <th scope="col">pipes, ${n}</th>
            </tr>
          </thead>
          <tbody>
            ${o.readings.map(i=>r`<tr class=${i.planned?"planned":""}>
                  <th scope="row">${S(C(l.units,i.net_g))}${i.planned?" (planned)":""}</th>
                  <td>${T(i.overrun_percent,0)} %</td>
                  <td>${t.plan.cut?i.casts:i.pieces}</td>
                </tr>`)}
          </tbody>
        </table>`)}
  </details>`}var zi="pour",Ng=()=>yu().kept!==void 0;function qg(){ks();let t=yu(),e=l.bench.version!==void 0||l.bench.failed!==void 0;return r`<section class="weighing" data-part=${zi} aria-labelledby="run-title">
    ${n0(t)} ${i0(t)}
    ${t.weights&&e?r`${Og(t.weights)} ${Dg(t)} ${s0(t,t.weights)}`:u}
    ${xg(t)}
  </section>`}function n0(t){let{weights:e}=t;return r`<div class="weighing-head">
    <h1 id="run-title" tabindex="-1">${e?.plan.run??String(l.run.now.name??"")}</h1>
    ${e?r`<p class="which">${o0(t,e)}</p>`:u}
    <div class="row">
      ${f({label:"Pieces to sell",at:"/sell",count:!0,short:!0})} ${kg(t)}
    </div>
  </div>`}function o0(t,{plan:e,batch:n,vessels:o}){let i=o.flatMap(d=>d.rows),s=i.filter(({key:d})=>Pn(t.number,d).is_done).length,a=t.of>1?`Batch ${t.number} of ${t.of}: `:"";return r`<b>${a}${we(e,n)}</b>, ${s} of ${i.length} weighed`}function i0({number:t,weights:e}){let{failed:n,unsent:o,told:i,complaints:s,version:a}=l.bench,d=o!==void 0&&no(t);return r`<div class="bench-told" role="status">
    ${i?.batch===t?r`<p class="alarm">${i.words}</p>
            <button type="button" @click=${qc}>I have looked</button>`:u}
    ${d?r`<p class="alarm">
            <strong>Not kept yet:</strong> ${o}. What you tick is kept in this browser, and sent as soon as the
            program answers.
          </p>`:u}
    ${n!==void 0?r`<p class="alarm"><strong>What is ticked already could not be read:</strong> ${n}.</p>`:u}
    ${s.map(c=>r`<p class="alarm">${c}</p>`)}
    ${e||n!==void 0?u:r`<p class="hint">
            ${l.complaint?"No weights before this is corrected.":a===void 0?"Reading ...":""}
          </p>`}
  </div>`}function s0(t,e){let{vessels:n}=e,o=p=>n.filter(m=>m.batter===p),i=o(),s=i.filter(p=>p.day_before),a=i.filter(p=>!p.day_before),d=o("pipe").length>0,c=p=>p.map(m=>Su(t,e,m));return r`${c0(d,i)}
    <div class="batters ${d?"two":""}">
      ${Dr("ahead","To have ready",c(s))}
      ${Dr("base",d?"Base":"Batter",r0(t,e,o("pour"),s))}
      ${d?Dr("topping","Topping",[...c(o("pipe")),u0(t,e),Au(o("pipe"),l0(t,e))]):u}
      ${Dr("after","At the end",c(a))}
    </div>`}var Dr=(t,e,n)=>n.some(o=>o!==u)?r`<div class="part-of ${t}">
        <h2 id="weigh-${t}">${e}</h2>
        ${n}
      </div>`:u;function r0(t,e,n,o){let i=({vessel:a})=>a==="layers",s=a=>a.map(d=>Su(t,e,d));return[...s(n.filter(a=>!i(a))),Cg(t,e),...s(n.filter(i)),Au([...o,...n],a0(t,e))]}var Ug=(t,e,n=u)=>r`<p class=${Ie(t)?"old":""}>
    <b>Superfat as weighed:</b> ${e.map(o=>Yt(o.superfat_percent.effective)).join(", ")} ${n}
  </p>`,a0=(t,{batch:e})=>Ug(t,[e.pour],Xe("superfat_as_weighed")),l0=(t,{batch:e})=>Ug(t,e.pipe?.whippings??[]),u0=(t,e)=>r`${Lg(t,e)} ${jg(t,e)} ${Eg(t,e)}`,d0={lye_pot:"Lye",melt:"Melt",dust:"Dust"};function c0(t,e){let n=[...new Set(e.flatMap(({vessel:i})=>d0[i]??[]))].join(", ").toLowerCase(),o=[["pour",t?"Base":"Batter"],...t?[["pipe","Topping"]]:[],...n?[["rest",n.replace(/^./,i=>i.toUpperCase())]]:[]];return o.length<2?u:(o.some(([i])=>i===zi)||(zi="pour"),r`<div class="narrow">${rt("What is shown",zi,o,p0)}</div>`)}function p0(t){zi=t,Q(),requestAnimationFrame(()=>document.querySelector(".batters")?.scrollIntoView({block:"start"}))}var zg=()=>r`${ko(Ng()?"No new weights can be given.":void 0)} ${qg()}`;var m0={"set-up":wu,watch:wg,money:Vf,mould:Yf,print:nh};function Jg(t){let e=r`${ws().map(o=>co(o))} ${bs().map(po)}`;if(t==="weigh")return r`${e} ${zg()}`;let{plan:n}=l;return r`${e} ${ko()}
    <h1 id="run-title" tabindex="-1">${n?.run??String(l.run.now.name??"")}</h1>
    ${n?m0[t](n):f0(t)}`}function f0(t){return l.complaint?t==="set-up"?wu():r`<p class="hint">No figures yet: the set-up tells what is missing.</p>`:r`<p class="hint">Reading the run ...</p>`}var h0=()=>{h({new_run:{name:"",mould:"",formula:"",sell:""}}),requestAnimationFrame(()=>document.getElementById("new-run-name")?.focus())};function Kg(){let t=l.new_run;if(!t)return r`<p class="choice"><button type="button" class="strong" @click=${h0}>New run</button></p>`;let{name:e,mould:n,formula:o}=t,i=Ys(t.sell),s=e.trim()&&n&&o&&i,a=()=>{Wt(async()=>{await Ss({name:e.trim(),mould:n,formula:o,sell:i}),h({new_run:void 0})})};return r`<section class="card" aria-labelledby="new-run">
    <h2 id="new-run">New run</h2>
    <div class="row">
      <div class="field">
        <label for="new-run-name" data-said="required">Name</label>
        <input
          id="new-run-name"
          .value=${j(e)}
          @input=${d=>y(t,{name:d.target.value})}
          autocomplete="off"
          spellcheck="false"
        />
      </div>
      ${Vg(t,"mould","Mould",g0())} ${Vg(t,"formula","Base",_0())}
      ${Zs("new-run-sell",t.sell,d=>y(t,{sell:d}))}
    </div>
    <div class="choice">
      <button type="button" class="strong" ?disabled=${!s} @click=${a}>Make the run</button>
      <button type="button" @click=${()=>h({new_run:void 0})}>Cancel</button>
    </div>
    ${s?u:r`<p class="hint">A run needs a name, a mould, a base, and how many pieces are to be sold.</p>`}
  </section>`}var g0=()=>[...(l.files?.moulds??[]).filter(t=>!t.shipped).map(t=>[t.file,t.name||t.file]),...l.catalogue.map(t=>[t.path,t.name])],_0=()=>(l.files?.formulas??[]).map(t=>[t.file,t.name||t.file]);function Vg(t,e,n,o){let i=`new-run-${e}`;return r`<div class="field choose">
    <label for=${i} data-said="required">${n}</label>
    <select id=${i} @change=${a=>y(t,{[e]:a.target.value})}>
      <option value="" .selected=${j(t[e]==="")}>choose ...</option>
      ${o.map(([a,d])=>r`<option value=${a} .selected=${j(a===t[e])}>${d}</option>`)}
    </select>
  </div>`}var $0=(t,e)=>(e.changed??"").localeCompare(t.changed??"");function Gg(){let t=l.files?.runs??[],e=t.filter(o=>!o.shipped).sort($0),n=t.filter(o=>o.shipped);return r`${xo("Runs")} ${Kg()}
    <section aria-labelledby="runs-title">
      <h2 id="runs-title">Your runs</h2>
      ${e.length?En(e,Qg):r`<p class="aside">No runs of your own in ${l.files?.folder} yet.</p>`}
    </section>
    <section aria-labelledby="examples-title">
      <h2 id="examples-title">Examples</h2>
      ${En(n,Qg)}
    </section>`}function Qg(t){let{pieces:e,mould:n,due:o,made_on:i,changed:s}=t,a=[e===void 0?"":ct(e,"piece"),n??"",o?`due ${uo(o)}`:"",i?`made ${uo(i)}`:s?`changed ${uo(s)}`:""].filter(Boolean);return To({kind:kn,one:t,facts:a,picture:b0(n),open:()=>Ye(t.file)})}var b0=t=>l.files?.moulds.find(e=>e.name===t)?.file??l.catalogue.find(e=>e.name===t)?.path;var Xg=document.getElementById("page");function t_(){let{view:t,fault:e}=l;return r` <button type="button" class="skip" @click=${()=>document.getElementById("main")?.focus()}>
      Skip to the figures
    </button>
    ${Cf()} ${Mp()}
    <main id="main" tabindex="-1" data-view=${t} class=${l.is_old&&!ee(t)?"old-now":""}>
      ${e?r`${t==="reading"?r`<h1>Brimwright</h1>`:u}
              <p class="alarm" role="alert">${e}</p>`:u}
      ${y0()}
    </main>
    <p class="unseen" role="status">${l.announcement}</p>`}var w0={runs:Gg,formulas:Rf,moulds:Sf};function y0(){let{view:t,fault:e}=l;return Pe(t)?Jg(t):ee(t)?w0[t]():t==="formula"?$f():e?u:r`<h1>Brimwright</h1>
    <p>Reading the runs of this folder ...</p>`}kd(()=>{af(),he(t_(),Xg),x0()});he(t_(),Xg);document.addEventListener("keydown",t=>{if(!(t.ctrlKey||t.metaKey)||t.key.toLowerCase()!=="z"||ee(l.view)&&!l.mould)return;t.preventDefault();let{undo:e,redo:n}=fr();(t.shiftKey?n:e)?.()});document.addEventListener("visibilitychange",()=>{if(document.visibilityState==="visible")return up();V(l.run)&&se()});function v0(){if(!l.run.file)return Ou();h({fault:void 0}),V(l.run)&&se(),et()}function Ou(){h({fault:void 0}),hf().catch(t=>{h({fault:k0(t)}),t instanceof v&&t.may_pass&&window.setTimeout(Ou,2e3)})}function k0(t){return t instanceof v&&[401,403].includes(t.status)?"This address is from an earlier start. Open the address that brimwright printed this time: it may be pasted here.":t instanceof Error?t.message:String(t)}var Yg=new ResizeObserver(([{target:t}])=>e_(t.offsetHeight)),Zg=null;function x0(){let t=document.querySelector(".foremost");t!==Zg&&(Yg.disconnect(),t?Yg.observe(t):e_(0),Zg=t)}var e_=t=>document.documentElement.style.setProperty("--foremost",`${t}px`);Ap();ff();Cu(t=>{yo(),t&&v0()});Ou();
